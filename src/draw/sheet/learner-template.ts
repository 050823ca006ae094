/** What one learner gets back: marks, the next thing, and each answer beside the right one. */

export const LEARNER_TYPST = `
#let data = json("/data.json")
#let grey = luma(35%)
#let faint = luma(62%)
#let label(body) = text(size: 7.5pt, fill: grey, body)

#set document(title: data.title + ": " + data.learner, date: none)
#set text(font: "B612", size: 9.5pt, lang: "en", region: "us", fill: black, hyphenate: false)
#set par(leading: 0.55em, spacing: 0.8em)
#set page(
  paper: if data.paper == "letter" { "us-letter" } else { "a4" },
  margin: (x: 15mm, top: 18mm, bottom: 17mm),
  header-ascent: 5mm,
  footer-descent: 5mm,
  header: context if counter(page).get().first() > 1 { text(size: 8.5pt, fill: grey)[#data.title: #data.learner] },
  footer: context grid(
    columns: (1fr, auto), align: bottom, column-gutter: 6mm,
    text(size: 7pt, fill: grey, data.caution),
    text(size: 8.5pt)[#counter(page).display() / #counter(page).final().first()],
  ),
)
#show heading: it => it.body
#set table.cell(breakable: false)

#stack(dir: ttb, spacing: 3.2mm,
  text(size: 17pt, weight: "bold", heading(level: 1, data.learner)),
  text(size: 8.5pt, fill: grey)[#data.title · #data.place · #data.date],
)
#block(above: 6mm, below: 7mm, stroke: 1.2pt, radius: 1.2mm, inset: (x: 6mm, y: 5mm), width: 100%, grid(columns: (34mm, 1fr), column-gutter: 6mm,
  [#label[Marks] #block(above: 2.6mm, text(size: 15pt, weight: "bold", data.marks))],
  [#label[Next] #block(above: 2.6mm, text(size: 10.5pt, data.next))],
))
#table(columns: (auto, 1.2fr, 1fr, 1fr, auto), stroke: none, inset: (x: 0mm, y: 1.8mm), column-gutter: 5mm, align: (right, left, left, left, right),
  table.header(label[No.], label[Problem], label[Your answer], label[Right], label[Mark]),
  table.hline(stroke: 0.6pt),
  ..data.answers.map(each => (
    each.problem,
    [#each.title#for idea in each.ideas { linebreak(); text(size: 8pt, fill: grey)[“#idea”] }],
    if each.isRight { each.written } else { text(weight: "bold", each.written) },
    each.right,
    text(weight: "bold", each.mark),
    table.hline(stroke: 0.3pt + faint),
  )).flatten())
#if data.unanswered != "" { block(above: 4mm, text(fill: grey)[Not answered: #data.unanswered]) }
`;
