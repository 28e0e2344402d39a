package baysheet.cli;

import baysheet.record.ProcedureList;
import java.util.List;

/** The list of procedures for reading: one block each, for their fasteners need room. */
final class ProcedureTable {
  private ProcedureTable() {}

  static String of(List<ProcedureList.Line> lines, boolean forVehicle) {
    StringBuilder text = new StringBuilder();
    for (ProcedureList.Line line : lines) {
      text.append(line.name()).append("  ").append(line.title()).append('\n');
      if (forVehicle) {
        line.ready().forEach(it -> text.append("    ").append(words(it)).append('\n'));
      } else {
        add(text, "at", line.places());
        line.serves().ifPresent(it -> add(text, "gives access as", List.of(it)));
        add(text, "for vehicles with", line.needs());
        add(text, "fasteners", line.fasteners());
      }
    }
    return text.toString();
  }

  private static void add(StringBuilder text, String what, List<String> words) {
    if (!words.isEmpty()) {
      text.append("    ").append(what).append(": ").append(String.join(", ", words)).append('\n');
    }
  }

  private static String words(ProcedureList.Readiness it) {
    String state =
        switch (it.state()) {
          case READY -> "ready";
          case UNSUITABLE -> "not possible: " + it.because();
          case INCOMPLETE -> lacks(it);
        };
    return "at " + it.place() + ": " + state;
  }

  private static String lacks(ProcedureList.Readiness it) {
    String missing = it.missing().isEmpty() ? "" : "missing " + String.join(", ", it.missing());
    String unknown = it.unknown().isEmpty() ? "" : "unknown " + String.join(", ", it.unknown());
    return missing + (missing.isEmpty() || unknown.isEmpty() ? "" : "; ") + unknown;
  }
}
