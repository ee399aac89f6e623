//! One file of the engine with all of its changes in it, each waiting for its number to be switched on.
//!
//! `a + b` becomes `match (a, b) { (l, r) => match which(&[7, 8]) { 0 => l + r, 1 => l - r, _ => l * r } }`: operands
//! stand once, however deep an expression goes, and what was written stands first, so that types come from it.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

use anyhow::{Context, Result};
use proc_macro2::{LineColumn, TokenStream};
use quote::{ToTokens, quote};
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::visit_mut::{self, VisitMut};
use syn::{Arm, BinOp, Block, Expr, FieldValue, ReturnType, Signature, parse_quote};

use super::{Change, Genre};

/// A file with its changes woven in.
pub struct Rewritten {
    /// The text to compile.
    pub text: String,
    /// Changes that have no place in it and are tried one by one.
    pub alone: BTreeSet<u32>,
    /// Changes of `&&` beside a `let`, which only `&&` may stand beside.
    pub no_rust: BTreeSet<u32>,
    /// Where in the text each change's own code stands.
    own: Vec<(Range<usize>, u32)>,
    /// Where in the text an expression stands that has changes.
    around: Vec<(Range<usize>, Vec<u32>)>,
}

/// Whose fault an error of the compiler is.
pub enum Fault {
    /// The code of one change does not compile.
    Own(u32),
    /// What was made of the expression around it does not; its changes are tried one by one.
    Form(Vec<u32>),
    /// It lies outside all changes.
    Unknown,
}

impl Rewritten {
    /// Weaves the changes into the file's text.
    pub fn of(text: &str, changes: &[&Change]) -> Result<Self> {
        let mut file = syn::parse_file(text)?;
        let mut weave = Weave { open: BTreeMap::new(), no_rust: BTreeSet::new() };
        for change in changes {
            weave.open.entry((change.genre, change.span.start())).or_default().push(change);
        }
        weave.visit_file_mut(&mut file);
        let alone = weave.open.values().flatten().map(|c| c.id).collect();
        let text = file.into_token_stream().to_string();
        let mut places = Places::default();
        places.visit_file(&syn::parse_file(&text).context("what was woven does not parse")?);
        Ok(Self { text, alone, no_rust: weave.no_rust, own: places.own, around: places.around })
    }

    /// Whose fault an error at some bytes of the text is.
    pub fn fault(&self, at: &Range<usize>) -> Fault {
        let holds = |range: &Range<usize>| range.start <= at.start && at.end <= range.end;
        let own = self.own.iter().filter(|(range, _)| holds(range)).min_by_key(|(range, _)| range.len());
        let around =
            self.around.iter().filter(|(range, _)| holds(range)).min_by_key(|(range, _)| range.len());
        match (own, around) {
            (Some((_, id)), _) => Fault::Own(*id),
            (None, Some((_, ids))) => Fault::Form(ids.clone()),
            (None, None) => Fault::Unknown,
        }
    }
}

/// Line and column, both as `proc_macro2` counts them.
type Start = (usize, usize);

fn start(at: LineColumn) -> Start {
    (at.line, at.column)
}

struct Weave<'a> {
    /// Changes that have not found their place.
    open: BTreeMap<(Genre, Start), Vec<&'a Change>>,
    no_rust: BTreeSet<u32>,
}

impl<'a> Weave<'a> {
    fn take(&mut self, genre: Genre, at: LineColumn) -> Vec<&'a Change> {
        self.open.remove(&(genre, start(at))).unwrap_or_default()
    }

    /// Puts the early returns of a function's changes in front of its body.
    fn body(&mut self, signature: &Signature, block: &mut Block) {
        if signature.constness.is_some() {
            return;
        }
        let first = block.stmts.first().map(|s| s.span().start());
        let changes = first.map(|at| self.take(Genre::FnValue, at)).unwrap_or_default();
        self.visit_block_mut(block);
        // Behind one `impl Iterator` there is one type.
        if matches!(&signature.output, ReturnType::Type(_, of) if says_impl(of)) && !changes.is_empty() {
            let ids = changes.iter().map(|c| c.id);
            let mut all = quote! { 0 => crate::mutant::Either::One((move || #block)()), };
            let within = |depth: usize, inner: TokenStream| {
                (0..depth).fold(inner, |inner, _| quote! { crate::mutant::Either::Other(#inner) })
            };
            for (number, change) in (1_usize..).zip(&changes) {
                let literal = proc_macro2::Literal::usize_unsuffixed(number);
                // What is leaked is there to be changed, and what is asked for is there to be read.
                let value =
                    change.replacement.replace("Box::leak", "&*Box::leak").parse().unwrap_or_default();
                let value: TokenStream = value;
                let value = within(number, quote! { crate::mutant::Either::One(#value) });
                all.extend(quote! { #literal => #value, });
            }
            let none = within(changes.len() + 1, quote! { ::core::iter::empty() });
            all.extend(quote! { _ => #none });
            *block = parse_quote! {{ match () { () => match crate::mutant::which(&[#(#ids),*]) { #all } } }};
            return;
        }
        for change in changes.into_iter().rev() {
            let (id, value) = (change.id, change.tokens());
            block.stmts.insert(0, parse_quote! { if crate::mutant::on(#id) { return #value; } });
        }
    }

    fn binary(&mut self, expr: &mut Expr) {
        let Expr::Binary(whole) = &*expr else { return };
        let chained = whole.op.to_token_stream().to_string() == "&&" && has_let(expr);
        let op = whole.op;
        visit_mut::visit_expr_mut(self, expr);
        let changes = self.take(Genre::BinaryOperator, op.span().start());
        let (Expr::Binary(whole), false) = (&*expr, changes.is_empty()) else { return };
        if chained {
            self.no_rust.extend(changes.iter().map(|c| c.id));
            return;
        }
        let (left, right) = (&whole.left, &whole.right);
        let ids: Vec<u32> = changes.iter().map(|c| c.id).collect();
        let woven: TokenStream = match op {
            // The right side is asked only if it matters, and stands once: `l && r` is r if l, `l || r` is r if not l.
            BinOp::And(_) | BinOp::Or(_) if ids.len() == 1 => {
                let id = ids[0];
                let asks = if matches!(op, BinOp::And(_)) { quote!(!=) } else { quote!(==) };
                quote! { (match #left { l__ => if l__ #asks crate::mutant::on(#id) { #right } else { l__ } }) }
            }
            BinOp::And(_) | BinOp::Or(_) => {
                self.open.insert((Genre::BinaryOperator, start(op.span().start())), changes);
                return;
            }
            BinOp::AddAssign(_)
            | BinOp::SubAssign(_)
            | BinOp::MulAssign(_)
            | BinOp::DivAssign(_)
            | BinOp::RemAssign(_)
            | BinOp::BitAndAssign(_)
            | BinOp::BitOrAssign(_)
            | BinOp::BitXorAssign(_)
            | BinOp::ShlAssign(_)
            | BinOp::ShrAssign(_) => {
                let with = |op: &TokenStream| quote! { #left #op r__ };
                let arms = arms(&op.to_token_stream(), &changes, with);
                quote! { (match #right { r__ => match crate::mutant::which(&[#(#ids),*]) { #arms } }) }
            }
            BinOp::Eq(_) | BinOp::Ne(_) | BinOp::Lt(_) | BinOp::Le(_) | BinOp::Gt(_) | BinOp::Ge(_) => {
                let arms = arms(&op.to_token_stream(), &changes, |op| quote! { l__ #op r__ });
                quote! { (match (&(#left), &(#right)) { (l__, r__) => match crate::mutant::which(&[#(#ids),*]) { #arms } }) }
            }
            // What is left computes a value from two values.
            _ => {
                let arms = arms(&op.to_token_stream(), &changes, |op| quote! { l__ #op r__ });
                quote! { (match (#left, #right) { (l__, r__) => match crate::mutant::which(&[#(#ids),*]) { #arms } }) }
            }
        };
        *expr = Expr::Verbatim(woven);
    }

    fn unary(&mut self, expr: &mut Expr) {
        let Expr::Unary(whole) = &*expr else { return };
        let op = whole.op;
        visit_mut::visit_expr_mut(self, expr);
        let changes = self.take(Genre::UnaryOperator, op.span().start());
        let (Expr::Unary(whole), [change]) = (&*expr, changes.as_slice()) else { return };
        let (inner, id) = (&whole.expr, change.id);
        *expr = Expr::Verbatim(quote! {
            (match #inner { v__ => match crate::mutant::which(&[#id]) { 0 => #op v__, _ => v__ } })
        });
    }

    /// `S { a: x, ..base }`, and the same without `a`.
    fn structure(&mut self, expr: &mut Expr) {
        let Expr::Struct(whole) = &*expr else { return };
        let starts: Vec<LineColumn> = whole.fields.iter().map(|f: &FieldValue| f.span().start()).collect();
        visit_mut::visit_expr_mut(self, expr);
        let Expr::Struct(whole) = &*expr else { return };
        let mut found = Vec::new();
        for (place, at) in starts.into_iter().enumerate() {
            let without = || {
                let mut other = whole.clone();
                let fields = std::mem::take(&mut other.fields);
                other.fields =
                    fields.into_iter().enumerate().filter(|(i, _)| *i != place).map(|(_, f)| f).collect();
                if !other.fields.is_empty() {
                    other.fields.push_punct(Default::default());
                }
                other
            };
            found.extend(self.take(Genre::StructField, at).iter().map(|c| (c.id, without())));
        }
        if found.is_empty() {
            return;
        }
        let ids = found.iter().map(|(id, _)| id);
        let numbers = (1..=found.len()).map(proc_macro2::Literal::usize_unsuffixed);
        let others = found.iter().map(|(_, other)| other);
        *expr = Expr::Verbatim(quote! {
            (match () { () => match crate::mutant::which(&[#(#ids),*]) { 0 => #whole, #(#numbers => #others,)* _ => ::core::unreachable!() } })
        });
    }
}

/// One arm for what was written and one for each change.
fn arms(op: &TokenStream, changes: &[&Change], with: impl Fn(&TokenStream) -> TokenStream) -> TokenStream {
    let plain = with(op);
    let numbers = (1..=changes.len()).map(proc_macro2::Literal::usize_unsuffixed);
    let others = changes.iter().map(|c| with(&c.tokens()));
    quote! { 0 => #plain, #(#numbers => #others,)* _ => ::core::unreachable!() }
}

fn has_let(expr: &Expr) -> bool {
    match expr {
        Expr::Let(_) => true,
        Expr::Binary(b) => has_let(&b.left) || has_let(&b.right),
        _ => false,
    }
}

fn says_impl(of: &syn::Type) -> bool {
    struct Seen(bool);
    impl<'a> Visit<'a> for Seen {
        fn visit_type_impl_trait(&mut self, _: &'a syn::TypeImplTrait) {
            self.0 = true;
        }
    }
    let mut seen = Seen(false);
    seen.visit_type(of);
    seen.0
}

impl VisitMut for Weave<'_> {
    fn visit_item_fn_mut(&mut self, item: &mut syn::ItemFn) {
        self.body(&item.sig, &mut item.block);
    }

    fn visit_impl_item_fn_mut(&mut self, item: &mut syn::ImplItemFn) {
        self.body(&item.sig, &mut item.block);
    }

    fn visit_trait_item_fn_mut(&mut self, item: &mut syn::TraitItemFn) {
        if let Some(block) = &mut item.default {
            self.body(&item.sig, block);
        }
    }

    // Nothing can be switched in what the compiler works out, nor in patterns.
    fn visit_item_const_mut(&mut self, _: &mut syn::ItemConst) {}
    fn visit_impl_item_const_mut(&mut self, _: &mut syn::ImplItemConst) {}
    fn visit_item_static_mut(&mut self, _: &mut syn::ItemStatic) {}
    fn visit_type_mut(&mut self, _: &mut syn::Type) {}
    fn visit_pat_mut(&mut self, _: &mut syn::Pat) {}

    fn visit_arm_mut(&mut self, arm: &mut Arm) {
        let deleted = self.take(Genre::MatchArm, arm.span().start());
        let guard_at = arm.guard.as_ref().map(|(_, guard)| guard.span().start());
        let guarded = guard_at.map(|at| self.take(Genre::MatchArmGuard, at)).unwrap_or_default();
        visit_mut::visit_arm_mut(self, arm);
        for change in guarded {
            let id = change.id;
            let Some((_, guard)) = &mut arm.guard else { continue };
            **guard = if change.replacement == "true" {
                parse_quote! { (crate::mutant::on(#id) || (#guard)) }
            } else {
                parse_quote! { (!crate::mutant::on(#id) && (#guard)) }
            };
        }
        for change in deleted {
            let id = change.id;
            let off: Expr = parse_quote! { !crate::mutant::on(#id) };
            let guard = match arm.guard.take() {
                Some((_, guard)) => parse_quote! { #off && (#guard) },
                None => off,
            };
            arm.guard = Some((Default::default(), Box::new(guard)));
        }
    }

    fn visit_expr_mut(&mut self, expr: &mut Expr) {
        match expr {
            Expr::Binary(_) => self.binary(expr),
            Expr::Unary(_) => self.unary(expr),
            Expr::Struct(_) => self.structure(expr),
            // The length is worked out by the compiler.
            Expr::Repeat(repeat) => self.visit_expr_mut(&mut repeat.expr),
            _ => visit_mut::visit_expr_mut(self, expr),
        }
    }
}

/// Finds the changes again in what was woven.
#[derive(Default)]
struct Places {
    own: Vec<(Range<usize>, u32)>,
    around: Vec<(Range<usize>, Vec<u32>)>,
}

impl<'a> Visit<'a> for Places {
    fn visit_expr_match(&mut self, whole: &'a syn::ExprMatch) {
        let ids = numbers_of(&whole.expr, "crate :: mutant :: which");
        for (arm, id) in whole.arms.iter().skip(1).zip(&ids) {
            self.own.push((arm.span().byte_range(), *id));
        }
        if let [arm] = whole.arms.as_slice() {
            let inner = match &*arm.body {
                Expr::Match(inner) => numbers_of(&inner.expr, "crate :: mutant :: which"),
                Expr::If(inner) => numbers_of(&inner.cond, "crate :: mutant :: on"),
                _ => Vec::new(),
            };
            if !inner.is_empty() {
                self.around.push((whole.span().byte_range(), inner));
            }
        }
        visit::visit_expr_match(self, whole);
    }

    fn visit_expr_if(&mut self, whole: &'a syn::ExprIf) {
        if let (Expr::Call(_), [id]) =
            (&*whole.cond, numbers_of(&whole.cond, "crate :: mutant :: on").as_slice())
        {
            self.own.push((whole.then_branch.span().byte_range(), *id));
        }
        visit::visit_expr_if(self, whole);
    }
}

/// The numbers with which a call of the switch is made, if it is one (or a comparison with one).
fn numbers_of(call: &Expr, name: &str) -> Vec<u32> {
    struct Numbers(Vec<u32>);
    impl<'a> Visit<'a> for Numbers {
        fn visit_lit_int(&mut self, number: &'a syn::LitInt) {
            self.0.extend(number.base10_parse::<u32>());
        }
    }
    let call = match call {
        Expr::Binary(both) => &*both.right,
        _ => call,
    };
    let Expr::Call(call) = call else { return Vec::new() };
    if call.func.to_token_stream().to_string() != name {
        return Vec::new();
    }
    let mut numbers = Numbers(Vec::new());
    numbers.visit_expr_call(call);
    numbers.0
}
