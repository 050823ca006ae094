/** The key, apart from the sheet: the right answer, what every other one tells, and the reasons. Problems follow each other closely. */

export const KEY_TYPST = `
#let data = json("/data.json")
#let grey = luma(35%)
#let faint = luma(60%)
#let mono(body) = text(font: "B612 Mono", body)

#set document(title: "Key: " + data.title, date: none)
#set text(font: "B612", size: 9pt, lang: "en", region: "us", fill: black, hyphenate: false)
#set par(leading: 0.55em, spacing: 0.6em)
#set page(
  paper: if data.paper == "letter" { "us-letter" } else { "a4" },
  margin: (x: 15mm, top: 18mm, bottom: 17mm),
  header-ascent: 5mm,
  footer-descent: 5mm,
  header: context if counter(page).get().first() > 1 { text(size: 8.5pt, fill: grey)[Key: #data.title] },
  footer: context grid(
    columns: (1fr, auto), align: bottom, column-gutter: 6mm,
    text(size: 7pt, fill: grey, data.caution),
    text(size: 8.5pt)[#counter(page).display() / #counter(page).final().first()],
  ),
)
#show heading: it => it.body

#stack(dir: ttb, spacing: 3.2mm,
  text(size: 17pt, weight: "bold", heading(level: 1)[Key: #data.title]),
  text(size: 8.5pt, fill: grey)[#data.place · #data.date · for the instructor, apart from the sheet],
  [],
)

#let answers(it) = table(
  columns: (auto, auto, 1fr), stroke: none, inset: (x: 1.2mm, y: 0.9mm), column-gutter: 1.5mm, align: left,
  table.header(
    text(size: 7.5pt, fill: grey)[],
    text(size: 7.5pt, fill: grey)[Answer],
    text(size: 7.5pt, fill: grey)[What it tells],
  ),
  table.hline(stroke: 0.4pt + faint),
  ..it.answers.map(each => (
    if each.letter == none [] else { text(fill: grey, each.letter) },
    if each.isRight { text(weight: "bold", each.text) } else { each.text },
    if each.isRight [#text(weight: "bold")[right]]
      else if each.ideas.len() == 0 { text(fill: grey)[no idea we know of] }
      else { each.ideas.map(idea => "“" + idea + "”").join(linebreak()) },
  )).flatten(),
)

#for it in data.problems {
  block(breakable: false, width: 100%, inset: (top: 3.2mm, bottom: 3mm), stroke: (top: 0.6pt), stack(dir: ttb, spacing: 2.6mm,
    grid(columns: (auto, 1fr, auto), column-gutter: 2.6mm, align: horizon,
      box(fill: black, radius: 1mm, inset: (x: 1.9mm, y: 1.25mm), text(fill: white, weight: "bold", size: 10pt, str(it.number))),
      text(size: 11pt, weight: "bold", heading(level: 2)[#it.title #h(3mm) #it.right]),
      mono(text(size: 8.5pt, fill: grey, it.code))),
    {
      text(fill: grey, it.question)
      if it.given.len() > 0 {
        h(3mm)
        it.given.map(each => box[#text(fill: grey, each.label) #each.value]).join(h(4mm))
      }
    },
    grid(columns: (1.35fr, 1fr), column-gutter: 7mm,
      answers(it),
      pad(top: 1mm, enum(tight: false, spacing: 1.3mm, numbering: "1.", ..it.steps.map(step => [#step])))),
  ))
}
`;
