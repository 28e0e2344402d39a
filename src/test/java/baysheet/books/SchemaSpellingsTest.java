package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problems;
import baysheet.yaml.Node;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A schema takes a figure in the spellings that the reader takes, and in no other. */
class SchemaSpellingsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "torque; 110 N·m|110Nm|110 N.m|110 N-m|81 lbf·ft|81 lb-ft|81 ft-lb|81 ft lbs|81 FT-LB|81 lbs ft|81 foot pounds"
            + "|81 pound-force feet|97 in-lb|97 lbf·in|97 inch pounds|9.2 kgf·m|9.2 mkg|9.2 kpm|92 kgf·cm|11 daNm"
            + "|850 Ncm|100..120 N·m|100-120 N·m|100 – 120 Nm|100 N·m..120 N·m|110 ± 10 N·m|110 N·m ± 10"
            + "|100 to 120 N·m|100 Nm to 120 Nm|110 +10/-5 Nm|110 Nm +10/-5|110 N·m -5 %/+10 %|110 Nm +10 -5"
            + "|80 Nm + 90°|30 Nm +90°|30 ± 3 Nm + 90° + 45 deg|[25 Nm, 50 Nm + 90°]|100 to 120 Nm + 90°"
            + "|110 N·m +/- 5 %|110 N·m ± 10 N·m|snug|unknown|[30 N·m, +60°]|[30 N·m, 60 deg]|[30 Nm, loosen, 25 Nm]",
        "torque; 110 nm|110 mN·m|110 lbs|81 lbsft|110 N|110 ± 5 %|100..120|..120 N·m|110 ±  N·m|+110 N·m|110,5 N·m"
            + "|0110 N·m|.5 N·m|110 N·m kg|+60°|loosen|[+60°]|[30 N·m, 60]|[30 N·m, 0°]|5/8 N·m|0 N·m"
            + "|110 +10/+5 Nm|110 +10/-5|110 +10/-5 kg|100 to N·m|30 N·m + 0°|30 + 90°|80 Nm + 90",
        "recheck; 80 km|50 mi|50 miles|80 kilometres|80.5 km",
        "recheck; 80 m|80 KM|0 km|80|-80 km|1 000 km",
        "reach; {length: 40 mm, angle: 90°}|{length: 1-5/8 in, angle: 0 deg}|{length: 1 inch, angle: 180°}",
        "reach; {length: 40, angle: 90°}|{length: 1/3 in, angle: 0°}|{length: 40 mm, angle: 181°}|{length: 5/8 mm, angle: 0°}",
        "thread; M12x1.5|m8|M24x1.5 LH|1/2-20 UNF|10-32|M10-1.25|M12x1.50|M12x1.5-6g|M10-6H|1/2-13 UNC-2A|1/2-20unf-3b LH",
        "thread; 12x1.5|M|M12*1.5|1/2|W3/8|M012x1.5|M12x01.5|M12x1.5-9k",
        "class; 8.8|10.9|10|grade 8|A2-70|SAE grade 5|a4-80|A2 70|\"05\"|05",
        "class; 8.7|ten|grade 9|A2-60|B2-70",
        "head; hex 19 mm|Hex 3/4 in|12-point 36 mm|six-lobe T60|external six-lobe E14|hexagon key 8 mm|12-point key M10"
            + "|square 8 mm|slot 6 mm|cross PH2",
        "head; hex|19 mm|hex 19|six-lobe E14|six-lobe 40|cross T20|12-point key 10 mm|octagon 19 mm",
        "passes; one|[50 %, 100 %]|[30 percent, 100 per cent]",
        "passes; two|[50, 100]|[0 %, 100 %]",
      })
  void aFastenersFigure(String key, String values) {
    String others = key.equals("torque") ? "" : ", torque: 10 N·m";
    verdicts(
        "vehicle: test\nname: a\nsource: b\nfasteners:\n  wheels:\n    nut: {count: 5"
            + others
            + ", "
            + key
            + ": %s}\n",
        values);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "takes; 6 min|3/6/20 min|0.5/1/2 h|5 minutes|1 hr", "takes; 6|3/6 min|6 m|1/2 h|5 Min.",
        "apply; brake cleaner|brake grease on pin|oil on engine-mount",
            "apply; on pin|grease on|grease on The Pin",
        "undo; nut|nut at axle|nut at front-left|[a-b, c]", "undo; Nut|nut at weel|nut at|nut-",
      })
  void aStepsFigure(String key, String values) {
    verdicts(
        "procedure: test\ntitle: a\nat: wheel\nwork:\n  - {do: It, " + key + ": %s}\n", values);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "kerb-mass; 1480 kg|1.48 t|3260 lb|3260 pounds|1480 KG",
        "kerb-mass; 1480|1480 kgs|0 kg|1,480 kg",
        "front-share; 61 %|25 %|80 %|60.5 percent",
        "front-share; 0.9 %|99.5 %|61|61 per",
        "wheelbase; 2600 mm|2.6 m|102 in|8 ft|260 cm",
        "wheelbase; 2600|2600 km|0 mm|2600 MM",
        "years; 2017|2015..2019",
        "years; 15..19|2015-2019",
        "fluids; {oil: {capacity: 4.2 L}}|{oil: {capacity: 4 US qt}}|{oil: {capacity: 900 ml}}|{oil: {capacity: 1 imp gal}}",
        "fluids; {oil: {capacity: 4.2}}|{oil: {capacity: 4 qt}}|{oil: {capacity: 1 gal}}|{oil: {capacity: 0 L}}",
      })
  void aBooksFigure(String key, String values) {
    verdicts("vehicle: test\nname: a\nsource: b\n" + key + ": %s\n", values);
  }

  /** All of the values are taken by both, or refused by both. */
  private static void verdicts(String file, String values) {
    Set<Boolean> verdicts = new TreeSet<>();
    for (String value : values.split("\\|")) {
      Problems problems = new Problems();
      Node node = Shelf.parse(file.replace("%s", value), problems).orElseThrow();
      FileKind kind = FileKind.of(node);
      kind.read(node, "test", problems);
      boolean marked = !kind.marked(node, EditorView.YAML_1_2).isEmpty();
      assertEquals(problems.hasErrors(), marked, () -> value + " " + problems.all());
      verdicts.add(marked);
    }
    assertTrue(verdicts.size() == 1, () -> "some are taken, some are not: " + values);
  }
}
