package baysheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.json.JsonText;
import baysheet.plan.CaseFolders;
import baysheet.plan.Planner;
import baysheet.report.Problems;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The id of a sheet is the hash of all that the sheet says, and of nothing else. */
class SheetIdTest {
  /** What shows on no paper of these terms; and how many there are, where that decides on an s. */
  private static final Set<String> UNPRINTED =
      Set.of("Name.american", "FinalTorque.count", "Row.count");

  /** Numbers by which a sheet names its own torque lines: another one names none. */
  private static final Set<String> REFERENCES =
      Set.of("TorqueLine.n", "Removed.line", "Installed.line", "Tightened.line");

  @Test
  void keysAreSortedAndNothingStandsBetweenThem() throws IOException {
    String written = "{\"b\": [1.50, true], \"a\": {\"d\": \"x y\", \"c\": \"é\"}}\n";
    assertEquals(
        "{\"a\":{\"c\":\"é\",\"d\":\"x y\"},\"b\":[1.50,true]}",
        JsonText.canonical(JsonText.read(written.getBytes(StandardCharsets.UTF_8))));
  }

  /** Base 32 of RFC 4648, section 6: A to Z are 0 to 25, 2 to 7 are 26 to 31. */
  @Test
  void codeHoldsTheFirst75BitsOfTheHash() {
    SheetId id = SheetId.of(sheet());
    StringBuilder hash = new StringBuilder();
    for (char digit : id.hash().toCharArray()) {
      hash.append(bits(Character.digit(digit, 16), 4));
    }
    StringBuilder code = new StringBuilder();
    for (char digit : id.code().substring(1).toCharArray()) {
      code.append(bits(digit >= 'A' ? digit - 'A' : digit - '2' + 26, 5));
    }
    assertEquals(16, id.code().length());
    assertEquals(hash.substring(0, 75), code.toString());
    assertTrue(id.text().endsWith("-" + id.hash().substring(0, 6)), id.text());
  }

  @Test
  void idForMeasuringHasAsManyCharacters() {
    SheetId id = SheetId.of(sheet());
    SheetId wide = SheetId.asWide(sheet());
    assertEquals(id.text().replaceFirst("[0-9a-f]{6}$", "dddddd"), wide.text());
    assertEquals(id.hash().length(), wide.hash().length());
    assertTrue(wide.code().matches("[A-Z2-7]{16}"), wide.code());
  }

  private static String bits(int value, int count) {
    return Integer.toBinaryString(value | 1 << count).substring(1);
  }

  @Test
  void anotherPaperIsTheSameSheet() {
    assertEquals(SheetId.of(sheet()), SheetId.of(sheet().on(Shop.Paper.LETTER)));
  }

  /** Each text, number, flag and entry of some sheets, changed alone, gives another id. */
  @Test
  void oneWordOtherwiseIsAnotherSheet() {
    Set<String> silent = new TreeSet<>();
    int tried = 0;
    for (CaseFolders.JobOf job : CaseFolders.demo().subList(0, 3)) {
      Sheet sheet = Planner.plan(job.resolved(), new Problems()).orElseThrow();
      String id = SheetId.of(sheet).hash();
      for (Change change : changes(sheet, "Sheet")) {
        tried++;
        if (SheetId.of((Sheet) change.changed()).hash().equals(id)) {
          silent.add(change.what());
        }
      }
    }
    assertTrue(tried > 200, tried + " changes");
    assertEquals(new TreeSet<>(UNPRINTED), silent);
  }

  private record Change(String what, Object changed) {}

  private static List<Change> changes(Object value, String what) {
    List<Change> changes = new ArrayList<>();
    if (value instanceof String text) {
      changes.add(new Change(what, text + "x"));
    } else if (value instanceof Integer number) {
      changes.add(new Change(what, number + 1));
    } else if (value instanceof Boolean truth) {
      changes.add(new Change(what, !truth));
    } else if (value instanceof Optional<?> maybe && maybe.isPresent()) {
      changes(maybe.get(), what)
          .forEach(it -> changes.add(new Change(it.what(), Optional.of(it.changed()))));
    } else if (value instanceof List<?> list && !list.isEmpty()) {
      int last = list.size() - 1;
      for (Change it : changes(list.get(last), what)) {
        List<Object> changed = new ArrayList<>(list);
        changed.set(last, it.changed());
        changes.add(new Change(it.what(), changed));
      }
    } else if (value instanceof Record record && isOfSheet(record)) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        String name = record.getClass().getSimpleName() + "." + component.getName();
        Object part = REFERENCES.contains(name) ? List.of() : Altered.get(record, component);
        for (Change it : changes(part, name)) {
          Object changed = Altered.with(record, component.getName(), it.changed());
          changes.add(new Change(it.what(), changed));
        }
      }
    }
    return changes;
  }

  private static boolean isOfSheet(Record record) {
    return record.getClass().getPackageName().equals(Sheet.class.getPackageName());
  }

  private static Sheet sheet() {
    return Planner.plan(CaseFolders.demo().get(0).resolved(), new Problems()).orElseThrow();
  }
}
