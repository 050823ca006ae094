/**
 * The sheet: two problems to a page, each with its pictures side by side, which take what height the words leave. Black on white; what is
 * chosen is ticked in a box, what is told is written on a line.
 */

export const SHEET_TYPST = `
#let data = json("/data.json")
#let grey = luma(35%)
#let faint = luma(60%)
#let mono(body) = text(font: "B612 Mono", body)
#let tick = box(width: 3.3mm, height: 3.3mm, stroke: 0.7pt, baseline: 0.45mm, radius: 0.4mm)
#let rule(width) = box(width: width, height: 4mm, stroke: (bottom: 0.7pt), baseline: 1mm)
#let dotted = line(length: 100%, stroke: (paint: faint, thickness: 0.6pt, dash: "dotted"))

#set document(title: data.title, date: none)
#set text(font: "B612", size: 9.5pt, lang: "en", region: "us", fill: black, hyphenate: false)
#set par(leading: 0.55em, spacing: 0.6em)
#set page(
  paper: if data.paper == "letter" { "us-letter" } else { "a4" },
  margin: (x: 15mm, top: 22mm, bottom: 17mm),
  header-ascent: 5mm,
  footer-descent: 5mm,
  header: context grid(
    columns: (1fr, auto, auto), align: bottom, column-gutter: 5mm,
    if counter(page).get().first() > 1 { text(size: 8.5pt, fill: grey, data.title) },
    text(size: 8.5pt)[Name #rule(62mm)],
    text(size: 8.5pt)[Date #rule(24mm)],
  ),
  footer: context grid(
    columns: (1fr, auto), align: bottom, column-gutter: 6mm,
    text(size: 7pt, fill: grey, data.caution),
    text(size: 8.5pt)[#counter(page).display() / #counter(page).final().first()],
  ),
)
#show heading: it => it.body

#let opening = pad(bottom: 5.5mm, stack(dir: ttb, spacing: 3.2mm,
  text(size: 17pt, weight: "bold", heading(level: 1, data.title)),
  text(size: 8.5pt, fill: grey)[#data.place · #data.date · #data.problems.len() #if data.problems.len() == 1 [problem] else [problems]],
  ..if data.note == "" { () } else { (data.note,) },
))

#let options(problem) = {
  let all = problem.answer.options
  let longest = calc.max(..all.map(option => option.text.clusters().len()))
  let columns = if longest > 34 { 1 } else if longest > 17 { 2 } else if longest > 10 { 3 } else { all.len() + 1 }
  let cells = all.map(option => grid(columns: (auto, auto, auto), column-gutter: 1.6mm, align: left + horizon,
    tick, text(size: 8pt, fill: grey, option.letter), text(weight: "bold", option.text)))
  let last = grid(columns: (auto, auto), column-gutter: 1.6mm, align: left + horizon, tick, text(data.dontKnow))
  if problem.answer.legend != "" {
    text(size: 8pt, fill: grey, problem.answer.legend)
    v(2.2mm, weak: true)
  }
  let widths = if columns == all.len() + 1 { (1fr,) * all.len() + (auto,) } else { (1fr,) * columns }
  grid(columns: widths, column-gutter: 4mm, row-gutter: 2.4mm, ..cells, last)
}

#let told(problem) = {
  let answer = problem.answer
  let digits = box(baseline: 1.4mm, grid(columns: (6mm,) * 3, rows: 6.4mm, stroke: 0.7pt, [], [], []))
  let field = if answer.kind == "direction" [Answer #h(1.5mm) #digits]
    else if answer.kind == "quantity" [Answer #rule(26mm) #if answer.unit == "degrees" [°] else { answer.unit }]
    else if answer.kind == "panel" [Flag #rule(24mm) #h(3mm) Needle #rule(40mm)]
    else if answer.kind == "place" [Mark your place with a cross.]
    else if answer.kind == "wind" [From #digits #h(1.5mm) true #h(3mm) at #rule(16mm) kt]
    else if answer.kind == "row" [#answer.figures.map(figure => box[#figure.label #rule(15mm) #figure.unit]).join(h(4mm))]
    else if answer.kind == "order" [Order, first to last #rule(60mm)]
    else [Answer #rule(60mm)]
  if answer.kind == "order" {
    grid(columns: (1fr, 1fr), column-gutter: 6mm, row-gutter: 1.8mm,
      ..answer.items.map(item => [#text(weight: "bold", item.letter) #h(1mm) #item.text]))
    v(2mm, weak: true)
  }
  grid(columns: (1fr, auto), align: horizon, field, [#tick #h(0.8mm) #data.dontKnow])
}

#let problem(it) = grid(
  rows: (auto, 1fr, auto, auto), row-gutter: 3mm, columns: 100%,
  stack(dir: ttb, spacing: 2.6mm,
    grid(columns: (auto, 1fr, auto), column-gutter: 2.6mm, align: horizon,
      box(fill: black, radius: 1mm, inset: (x: 1.9mm, y: 1.25mm), text(fill: white, weight: "bold", size: 10pt, str(it.number))),
      text(size: 11.5pt, weight: "bold", heading(level: 2, it.title)),
      mono(text(size: 8.5pt, fill: grey, it.code))),
    text(size: 10.5pt, it.question),
    ..if it.given.len() == 0 { () } else {
      (it.given.map(each => box[#text(fill: grey, each.label) #h(0.8mm) #text(weight: "bold", each.value)]).join(h(6mm)),)
    },
  ),
  if it.pictures.len() > 0 {
    grid(columns: (1fr,) * it.pictures.len(), rows: 100%, column-gutter: 5mm,
      ..it.pictures.map(picture => box(width: 100%, height: 100%, stroke: 0.5pt + faint, radius: 1mm, clip: true,
        align(center + horizon, image(picture.path, width: 100%, height: 100%, fit: "contain", alt: picture.words)))))
  },
  if it.answer.kind == "options" { options(it) } else { told(it) },
  { v(5mm); dotted; v(6.5mm); dotted; v(1mm) },
)

#let per = 2
#let pages = calc.ceil(data.problems.len() / per)
#for page in range(pages) {
  if page > 0 { pagebreak() }
  let these = data.problems.slice(page * per, calc.min(data.problems.len(), (page + 1) * per))
  block(height: 100%, grid(
    rows: if page == 0 { (auto, 1fr, auto, 1fr) } else { (1fr, auto, 1fr) }, row-gutter: 0pt,
    ..if page == 0 { (opening,) } else { () },
    problem(these.at(0)),
    pad(y: 5mm, line(length: 100%, stroke: 0.6pt)),
    if these.len() > 1 { problem(these.at(1)) },
  ))
}
`;
