/** The report of a marked pile: the class on its first page, then each learner, then how the questions fared, then rows left out. */

export const REPORT_TYPST = `
#let data = json("/data.json")
#let grey = luma(35%)
#let faint = luma(62%)
#let label(body) = text(size: 7.5pt, fill: grey, body)
#let quoted(names) = names.map(name => [“#name”]).join(linebreak())

#set document(title: "Marked: " + data.title, date: none)
#set text(font: "B612", size: 9pt, lang: "en", region: "us", fill: black, hyphenate: false)
#set par(leading: 0.55em, spacing: 0.8em)
#set page(
  paper: if data.paper == "letter" { "us-letter" } else { "a4" },
  margin: (x: 15mm, top: 18mm, bottom: 17mm),
  header-ascent: 5mm,
  footer-descent: 5mm,
  header: context if counter(page).get().first() > 1 { text(size: 8.5pt, fill: grey)[Marked: #data.title] },
  footer: context grid(
    columns: (1fr, auto), align: bottom, column-gutter: 6mm,
    text(size: 7pt, fill: grey, data.caution),
    text(size: 8.5pt)[#counter(page).display() / #counter(page).final().first()],
  ),
)
#show heading: it => it.body
#set table.cell(breakable: false)
#let chapter(body) = block(above: 8mm, below: 3mm, sticky: true, text(size: 12.5pt, weight: "bold", heading(level: 2, body)))

// One square a learner: full for likely, hatched for maybe, empty for the rest.
#let hatched = tiling(size: (1.1mm, 1.1mm))[
  #place(line(start: (0%, 100%), end: (100%, 0%), stroke: 0.45pt))
]
#let squares(idea, size: 3.2mm) = {
  let room = calc.max(data.learnerCount, 1)
  let side = calc.min(size / 1mm, 150 / room - 1) * 1mm
  let square(fill) = box(width: side, height: side, stroke: 0.6pt, fill: fill)
  stack(dir: ltr, spacing: 1mm,
    ..range(room).map(at => square(
      if at < idea.likely { black } else if at < idea.likely + idea.maybe { hatched } else { none })))
}

#stack(dir: ttb, spacing: 3.2mm,
  text(size: 17pt, weight: "bold", heading(level: 1)[Marked: #data.title]),
  text(size: 8.5pt, fill: grey)[#data.counts · #data.place · #data.date · for the instructor],
)

#block(above: 6mm, stroke: 1.2pt, radius: 1.2mm, inset: (x: 6mm, y: 5.5mm), width: 100%)[
  #label[Reteach first]
  #if data.ideas.len() == 0 {
    block(above: 3mm, text(size: 15pt, weight: "bold")[No mistaken idea stands out])
  } else {
    let first = data.ideas.first()
    block(above: 3mm, below: 4mm, text(size: 15pt, weight: "bold")[“#first.name”])
    grid(columns: (auto, 1fr), column-gutter: 4mm, align: horizon, squares(first, size: 4mm), [])
    block(above: 2.6mm, below: 4mm, text(weight: "bold", first.counts))
    grid(columns: (17mm, 1fr), row-gutter: 2.6mm,
      label[What is so], first.refutation,
      label[Show], first.remedy,
      ..if first.problems == "" { () } else { (label[On], first.problems) })
  }
  #if data.ideas.len() > 1 {
    block(above: 5mm, below: 3.4mm, line(length: 100%, stroke: 0.4pt + faint))
    label[Then]
    block(above: 3mm, grid(columns: (1fr, auto), row-gutter: 3mm, column-gutter: 5mm, align: (left + horizon, right + horizon),
      ..data.ideas.slice(1).map(each => ([“#each.name”], each.counts)).flatten()))
  }
]

#block(above: 5mm, grid(columns: (1fr, 1fr), column-gutter: 5mm, row-gutter: 5mm,
  ..data.answers.map(each => block(width: 100%, stroke: (top: 0.8pt), inset: (top: 3mm, bottom: 1mm))[
    #label(each.question)
    #block(above: 2.4mm, {
      let head = each.lines.first()
      text(size: 10pt, weight: "bold")[#if each.sign == "yes" [✓ ]#head]
      for more in each.lines.slice(1) { block(above: 2mm, text(size: 8.5pt, fill: grey, more)) }
    })
  ])))

#if data.groups.len() > 0 {
  chapter[Groups]
  table(columns: (1fr, 1.5fr), stroke: none, inset: (x: 0mm, y: 1.5mm), column-gutter: 5mm, align: left,
    table.header(label[Who shares an idea], label[Learners]),
    table.hline(stroke: 0.6pt),
    ..data.groups.map(each => ([“#each.name”], each.learners)).flatten())
}

#if data.cautions.len() > 0 {
  block(above: 6mm, text(size: 8pt, fill: grey, data.cautions.join(" ")))
}

#pagebreak()
#chapter[Learners]
#table(columns: (30mm, 17mm, 1.15fr, 1.35fr), stroke: none, inset: (x: 0mm, y: 1.9mm), column-gutter: 5mm, align: left,
  table.header(label[Learner], label[Marks], label[In mind], label[Next]),
  table.hline(stroke: 0.6pt),
  ..data.learners.map(each => (
    text(weight: "bold", each.learner),
    [#text(weight: "bold", each.marks)#for more in each.rest { linebreak(); label(more) }],
    {
      let parts = ()
      for state in each.state { parts.push(text(weight: "bold", state)) }
      if each.likely.len() > 0 { parts.push([#label[likely] #linebreak() #quoted(each.likely)]) }
      if each.maybe.len() > 0 { parts.push([#label[maybe] #linebreak() #quoted(each.maybe)]) }
      if parts.len() == 0 { text(fill: grey)[nothing stands out] } else { stack(dir: ttb, spacing: 2mm, ..parts) }
    },
    each.next,
    table.hline(stroke: 0.3pt + faint),
  )).flatten())

// Share right as a bar, with the range in which the true share lies as a thin line through it.
#let bar(of) = box(width: 26mm, height: 3.4mm, {
  place(rect(width: 26mm, height: 3.4mm, stroke: 0.5pt))
  place(rect(width: 26mm * of.share, height: 3.4mm, fill: luma(72%), stroke: 0.5pt))
  place(dx: 26mm * of.low, dy: 1.7mm, line(length: 26mm * (of.high - of.low), stroke: 1.2pt))
})

#pagebreak()
#chapter[Questions]
#text(size: 8pt, fill: grey)[Questions that ask and tell apart the same are counted together. The bar is the share right, from eight answers on; the line through it is where the true share lies, 95 times in 100. Figures from fewer than three learners are left out.]
#table(columns: (1fr, 30mm, 1.7fr), stroke: none, inset: (x: 0mm, y: 2mm), column-gutter: 5mm, align: left,
  table.header(label[Question], label[Answers], label[Wrong answers, and the idea behind each]),
  table.hline(stroke: 0.6pt),
  ..data.items.map(each => (
    [#text(weight: "bold", each.title) #linebreak() #label(each.problems)],
    {
      if each.share != none { bar(each.share); v(1.6mm, weak: true) }
      each.figures.map(figure => text(size: 8pt, figure)).join(linebreak())
    },
    {
      if each.wrong.len() > 0 {
        grid(columns: (9mm, 1fr), column-gutter: 1.6mm, row-gutter: 1.8mm,
          ..each.wrong.map(one => (align(right)[#one.picks~×], one.words)).flatten())
      } else { text(fill: grey)[none] }
      for note in each.notes { block(above: 2mm, text(size: 8pt, fill: grey, note)) }
      for doubt in each.doubts { block(above: 2mm, text(weight: "bold")[! #doubt]) }
    },
    table.hline(stroke: 0.3pt + faint),
  )).flatten())

#let rows(list, name) = table(columns: (auto, 1fr), stroke: none, inset: (x: 0mm, y: 1.2mm), column-gutter: 5mm, align: left,
  table.header(label[Line], label(name)),
  table.hline(stroke: 0.6pt),
  ..list.map(each => ([#each.line], each.words)).flatten())

#if data.accepted.len() > 0 {
  chapter[Accepted by hand]
  rows(data.accepted, [What, and why])
}
#if data.refused.len() > 0 {
  chapter[Not marked]
  rows(data.refused, [Why])
}
`;
