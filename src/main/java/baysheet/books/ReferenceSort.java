package baysheet.books;

import baysheet.report.ProblemCode;

/** What a name can refer to. */
public enum ReferenceSort {
  ITEM(ProblemCode.UNKNOWN_ITEM, "item", "an item of the catalogue, or a fastener of a spec book"),
  FASTENER(
      ProblemCode.UNKNOWN_FASTENER,
      "fastener",
      "a fastener that the catalogue or a procedure's step names"),
  PART(ProblemCode.UNKNOWN_ITEM, "part", "a new part of a procedure, or a fastener of a spec book"),
  KIND(ProblemCode.UNKNOWN_KIND, "kind", "a kind that a catalogue declares under kinds"),
  BAY(
      ProblemCode.UNKNOWN_KIND,
      "kind of bay",
      "lift, jack, arms, or a kind of lift or jack as shop.yaml says it"),
  CIRCUIT(ProblemCode.UNKNOWN_CIRCUIT, "circuit", "an item of the kind circuit"),
  TRAIT(ProblemCode.UNKNOWN_TRAIT, "trait", "a trait that a catalogue declares under traits"),
  STATE(ProblemCode.UNKNOWN_STATE, "state", "a state that a catalogue describes under states"),
  FLUID(ProblemCode.UNKNOWN_FLUID, "fluid", "a fluid that a catalogue declares under fluids"),
  CAUTION(ProblemCode.UNKNOWN_CAUTION, "caution", "a caution of the catalogue"),
  TOOL(ProblemCode.UNKNOWN_TOOL, "tool", "a tool that a catalogue declares under tools"),
  SPECIAL_TOOL(
      ProblemCode.UNKNOWN_TOOL,
      "special tool",
      "a special tool of the crib, or one declared under tools"),
  PRODUCT(
      ProblemCode.UNKNOWN_PRODUCT, "product", "a product that a catalogue declares under products"),
  MEASURE(
      ProblemCode.UNKNOWN_MEASURE,
      "measured figure",
      "a figure that a catalogue declares under measures"),
  PROCEDURE(
      ProblemCode.UNKNOWN_PROCEDURE,
      "procedure",
      "a file under procedures, or a role that one serves"),
  ROLE(ProblemCode.UNKNOWN_PROCEDURE, "role", "a role that a procedure serves"),
  QUALIFICATION(
      ProblemCode.UNKNOWN_QUALIFICATION,
      "qualification",
      "a qualification that a catalogue describes under qualifications"),
  PERSON(ProblemCode.UNKNOWN_PERSON, "person", "one of the people of the shop");

  final ProblemCode code;
  final String word;
  final String expected;

  ReferenceSort(ProblemCode code, String word, String expected) {
    this.code = code;
    this.word = word;
    this.expected = expected;
  }
}
