//! How long it takes to lay a document out: `cargo bench -p newel-paper`.

#[path = "../tests/all/made.rs"]
#[allow(dead_code)]
mod made;

use criterion::{Criterion, criterion_group, criterion_main};
use newel_paper::{Page, pdf};

fn papers(c: &mut Criterion) {
    let booklet = made::booklet("Goblet squat to a chair", 6, 8);
    let pages = pdf(&booklet, Page::A4).map(|p| p.pages).unwrap_or(0);
    let mut group = c.benchmark_group("paper");
    group.sample_size(10);
    // Each time with other words, so that nothing but fonts, templates and figures is warm.
    let mut turn = 0;
    group.bench_function(format!("booklet of {pages} pages, warm"), |b| {
        b.iter(|| {
            turn += 1;
            pdf(&made::booklet(&format!("Goblet squat {turn}"), 6, 8), Page::A4).map(|p| p.pages)
        });
    });
    group.bench_function("handout of six slots, warm", |b| {
        b.iter(|| {
            turn += 1;
            pdf(&made::handout(&format!("Goblet squat {turn}"), 6), Page::A4).map(|p| p.pages)
        });
    });
    group.finish();
}

criterion_group!(benches, papers);
criterion_main!(benches);
