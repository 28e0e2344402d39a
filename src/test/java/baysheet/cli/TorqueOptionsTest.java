package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import baysheet.output.Exit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code torque} takes from the command line, and what it refuses. */
class TorqueOptionsTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private Garage.Run torque(String words) {
    return TorqueCommandTest.torque(garage, words);
  }

  private JsonTree json(String words) {
    Garage.Run run = torque(words + " --json");
    assertEquals(Exit.DONE, run.exit(), run.err());
    return JsonTree.of(run.out().getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @CsvSource({
    "110, has no unit",
    "110 mm, not a torque",
    "'1,5 N·m', comma",
    "-5 N·m, -5",
    "110 N·m --thread M12x9, --thread",
    "110 N·m --class 11.9, --class",
    "110 N·m --used wet, --used",
    "110 N·m --angle 90°, --reach",
    "110 N·m --wrench B1, --shop",
    "110 N·m --shop SHOP --wrench B9, 'B1, B2, B3'",
    "110 N·m --from 20 N·m, --to",
    "110 N·m --from 20 N·m --to 200 N·m --step 1 N·m --reach 60 mm, --length",
    "110 N·m --from 200 N·m --to 20 N·m --step 1 N·m, scale",
    "110 N·m --reach 60mm 5 --shop SHOP, N·m 5",
  })
  void whatCannotBeReadIsAMistakeOfTheCommandLine(String words, String told) {
    Garage.Run run = torque(words);
    assertEquals(Exit.USAGE, run.exit(), run.out() + run.err());
    assertEquals("", run.out());
    run.says(told);
  }

  @Test
  void aShopFileWithErrorsIsNotUsed() {
    garage.change("shop.yaml", "to: 200 N·m", "to: 200");
    Garage.Run run = torque("110 N·m --shop SHOP");
    assertEquals(Exit.PROBLEMS, run.exit());
    assertEquals("", run.out());
    run.says("shop.yaml:11:");
  }

  @Test
  void aShopFolderThatIsNotThereIsNamed() {
    Garage.Run run = torque("110 N·m --shop SHOP/nowhere");
    assertEquals(Exit.FILES, run.exit());
    run.says("nowhere/shop.yaml");
  }

  /** Options may stand before the value as well as behind it, and never take a part of it. */
  @ParameterizedTest
  @CsvSource({
    "--band 5% 110 Nm, 110 Nm --band 5%",
    "--band 5 % 110 Nm, 110 Nm --band 5%",
    "--reach 60mm --shop SHOP --wrench B2 105 N·m, 105 N·m --shop SHOP --wrench B2 --reach 60 mm",
    "--json --thread M12x1.5 105 N·m, 105 N·m --thread M12x1.5",
    "--from 20 N·m --to 100 N·m --step 0.5 N·m 60 N·m, 60 N·m --from 20N·m --to 100N·m --step 0.5N·m",
    "--band 5% 30 N·m +60°, 30 N·m +60° --band 5%",
  })
  void theOrderOfOptionsAndValueIsFree(String before, String behind) {
    assertEquals(json(behind.replace("--json ", "")), json(before.replace("--json ", "")));
  }

  /** What would not be looked at is refused, so that nobody relies on it. */
  @ParameterizedTest
  @CsvSource({
    "110 N·m ± 10 % --band 2 %, --band",
    "100..120 N·m --band 2 %, --band",
    "110 N·m --class 10.9, --thread",
    "110 N·m --friction 0.14, --thread",
    "110 N·m --treatment oiled, --treatment",
    "110 N·m --on 2026-04-07, --on",
    "110 N·m --from 20 N·m --to 200 N·m --step 1 N·m --on 2026-04-07, --on",
    "110 N·m --from 20 N·m --to 200 N·m --step 1 N·m --length 500 mm, --length",
    "110 N·m --shop SHOP --wrench B2 --from 20 N·m --to 200 N·m --step 1 N·m, --wrench",
    "110 N·m --accuracy 6 %, --from",
    "110 N·m --reach 60 mm, --reach",
    "110 N·m --head hex_19_mm, --head",
  })
  void anOptionThatWouldBeIgnoredIsRefused(String words, String named) {
    Garage.Run run = torque(words);
    assertEquals(Exit.USAGE, run.exit(), run.out());
    assertEquals("", run.out());
    run.says(named);
  }

  @ParameterizedTest
  @CsvSource({"7.4.2026", "2026-13-01", "2026-4-7", "+12345-01-01", "today"})
  void aDayIsAnIsoDate(String day) {
    Garage.Run run = torque("105 N·m --shop SHOP --on " + day);
    assertEquals(Exit.USAGE, run.exit(), run.out());
    run.says("2026-04-07");
    assertFalse(run.err().contains("LocalDate"), run.err());
  }
}
