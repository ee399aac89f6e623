//! What must not change by accident in tauri.conf.json. Having a test of its own also makes Cargo build `newel-window`
//! whenever the whole workspace is tested, so that the tests in the real window never meet an old one.

use serde_json::Value;

fn configuration() -> Value {
    serde_json::from_str(include_str!("../tauri.conf.json")).expect("tauri.conf.json is JSON")
}

#[test]
fn the_identifier_is_frozen() {
    assert_eq!(
        configuration()["identifier"],
        "coach.newel.desktop",
        "the identifier decides where people's data lies: a change would lose it from sight"
    );
}

#[test]
fn the_page_may_reach_nothing_but_itself_and_the_commands() {
    let configuration = configuration();
    let policy =
        configuration["app"]["security"]["csp"].as_object().expect("the policy lists its directives");
    for (directive, sources) in policy {
        for source in sources.as_str().expect("sources are one string").split_whitespace() {
            // A coach's own picture comes from the core as data; nothing but pictures may.
            let picture = directive == "img-src" && source == "data:";
            let local = matches!(source, "'none'" | "'self'" | "ipc:" | "http://ipc.localhost");
            assert!(
                local || picture,
                "{directive} lets {source} in: no remote origin, no inline style or script"
            );
        }
    }
    assert_eq!(policy["default-src"], "'none'", "what is not named is refused");
    let ours = configuration["app"]["security"]["capabilities"].as_array().expect("capabilities are listed");
    assert!(ours.is_empty(), "the page has no capability but our own commands");
    assert_eq!(configuration["app"]["withGlobalTauri"], false, "only the bridge talks to the shell");
}

#[test]
fn the_window_fits_a_small_phone() {
    let window = &configuration()["app"]["windows"][0];
    let number =
        |field: &str| window[field].as_u64().unwrap_or_else(|| panic!("{field} is a number of CSS pixels"));
    assert!(
        number("minWidth") <= 320 && number("minHeight") <= 480,
        "the smallest phones in use are 320 by 480"
    );
    assert_eq!((number("width"), number("height")), (1100, 800), "the size at first start");
}
