/** A problem set as a QTI 3 package: an item for each problem, a test that puts them in order, the pictures, and the manifest of them all. */

import type { Problem } from "../problem.ts";
import type { ProblemSet } from "../problem-set.ts";
import { itemId, QTI_ROOT, type QtiPicture, qtiItem, XSI } from "./qti-item.ts";
import { type XmlElement, xml, xmlFile } from "./xml.ts";

/** A picture of a problem with where it lies in the package. */
export interface PackagePicture extends Omit<QtiPicture, "href"> {
  /** From the package's top. */
  readonly path: string;
}

const CP = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";
const CP_SCHEMA = "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd";
const ITEM_TYPE = "imsqti_item_xmlv3p0";
const TEST_TYPE = "imsqti_test_xmlv3p0";
const TEST_PATH = "test.xml";

const itemPath = (problem: Problem): string => `items/${itemId(problem)}.xml`;

/** The XML files of the package by their paths; `picturesOf` gives the pictures that lie beside them. */
export function qtiPackage(
  set: ProblemSet,
  picturesOf: (problem: Problem) => readonly PackagePicture[],
): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  const resources: XmlElement[] = [];
  for (const problem of set.problems) {
    const pictures = picturesOf(problem);
    const path = itemPath(problem);
    files.set(
      path,
      qtiItem(
        problem,
        pictures.map(({ path: at, ...picture }) => ({ ...picture, href: `../${at}` })),
      ),
    );
    resources.push(
      resource(
        itemId(problem),
        ITEM_TYPE,
        path,
        pictures.map((picture) => picture.path),
      ),
    );
  }
  files.set(TEST_PATH, testFile(set));
  const test = resource(
    "test",
    TEST_TYPE,
    TEST_PATH,
    [],
    set.problems.map((problem) => itemId(problem)),
  );
  files.set("imsmanifest.xml", manifest([test, ...resources]));
  return files;
}

const resource = (
  identifier: string,
  type: string,
  href: string,
  beside: readonly string[],
  needs: readonly string[] = [],
): XmlElement =>
  xml(
    "resource",
    { identifier, type, href },
    xml("file", { href }),
    beside.map((path) => xml("file", { href: path })),
    needs.map((identifierref) => xml("dependency", { identifierref })),
  );

const manifest = (resources: readonly XmlElement[]): string =>
  xmlFile(
    xml(
      "manifest",
      {
        xmlns: CP,
        "xmlns:xsi": XSI,
        "xsi:schemaLocation": `${CP} ${CP_SCHEMA}`,
        identifier: "needlework-problems",
      },
      xml("metadata", {}, xml("schema", {}, "QTI Package"), xml("schemaversion", {}, "3.0.0")),
      xml("organizations"),
      xml("resources", {}, resources),
    ),
  );

function testFile(set: ProblemSet): string {
  const title = set.title === "" ? "Problems" : set.title;
  return xmlFile(
    xml(
      "qti-assessment-test",
      { ...QTI_ROOT, identifier: "test", title, "tool-name": "Needlework" },
      xml("qti-outcome-declaration", { identifier: "SCORE", cardinality: "single", "base-type": "float" }),
      xml(
        "qti-test-part",
        { identifier: "part", "navigation-mode": "nonlinear", "submission-mode": "individual" },
        xml(
          "qti-assessment-section",
          { identifier: "section", title, visible: true },
          set.note === ""
            ? null
            : xml(
                "qti-rubric-block",
                { view: "candidate", use: "instructions" },
                xml("qti-content-body", {}, xml("p", {}, set.note)),
              ),
          set.problems.map((problem) =>
            xml("qti-assessment-item-ref", { identifier: itemId(problem), href: itemPath(problem) }),
          ),
        ),
      ),
      xml(
        "qti-outcome-processing",
        {},
        xml(
          "qti-set-outcome-value",
          { identifier: "SCORE" },
          xml(
            "qti-sum",
            {},
            xml("qti-test-variables", { "variable-identifier": "SCORE", "base-type": "float" }),
          ),
        ),
      ),
    ),
  );
}
