package baysheet.cli;

import baysheet.files.ShopFolders;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Head;
import baysheet.torque.Socket;
import baysheet.wording.Printed;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Tools of the crib of which nothing needs to show on the sheet of a job. */
final class UnneededTools {
  private static final Pattern ROW = Pattern.compile("^(crib\\.[a-z]+\\.[0-9]+).*");

  private final MutatedShop shop;
  private final MutatedShop.Unmutated before;

  UnneededTools(MutatedShop shop, MutatedShop.Unmutated before) {
    this.shop = shop;
    this.before = before;
  }

  private Path file() {
    return shop.root.resolve(ShopFolders.SHOP_FILE);
  }

  private String value(WrittenFact fact, String key) {
    return shop.value(file(), ROW.matcher(fact.path()).replaceFirst("$1") + "." + key);
  }

  /** Whether no row takes it, neither for the last round nor for an earlier one. */
  boolean isWrenchNotTaken(WrittenFact fact) {
    return before.result().torque().stream()
        .flatMap(UnneededTools::wrenches)
        .noneMatch(value(fact, "name")::equals);
  }

  private static Stream<String> wrenches(TorqueLine line) {
    Stream<Optional<String>> stages =
        line.method().stages().stream()
            .map(
                stage ->
                    stage instanceof TorqueLine.StageLine.Torque torque
                        ? torque.wrench()
                        : Optional.empty());
    return Stream.concat(stages, line.method().rounds().stream().map(TorqueLine.Round::wrench))
        .flatMap(Optional::stream);
  }

  /** Whether no row turns a head of its sizes with its square. */
  boolean isSocketNotTaken(WrittenFact fact) {
    return before.result().torque().stream()
        .filter(line -> line.hardware().socket().isPresent())
        .filter(
            line ->
                line.hardware().socket().orElseThrow().drive().print().equals(value(fact, "drive")))
        .noneMatch(line -> holds(fact, line.hardware().head().map(Head::print).orElse("")));
  }

  /** Whether the socket, or the size that alone was changed, is for this head. */
  private boolean holds(WrittenFact fact, String head) {
    String row = ROW.matcher(fact.path()).replaceFirst("$1");
    Optional<Head> turned = Head.parse(head).found();
    return Stream.of(Head.Form.values())
        .filter(form -> turned.filter(it -> it.form() == form || isHexagon(it, form)).isPresent())
        .flatMap(form -> sizes(fact, row + "." + form.word().replace(' ', '-'), form))
        .anyMatch(size -> turned.orElseThrow().size().equals(size));
  }

  private static boolean isHexagon(Head head, Head.Form form) {
    return head.form() == Head.Form.TWELVE_POINT && form == Head.Form.HEX;
  }

  private Stream<String> sizes(WrittenFact fact, String path, Head.Form form) {
    String one = fact.path().matches(Pattern.quote(path) + "\\.[0-9]+") ? fact.path() : path;
    return shop.facts(file()).stream()
        .filter(it -> it.path().equals(one))
        .flatMap(it -> UnprintedFacts.texts(it.node()))
        .flatMap(text -> Socket.sizes(form, text).found().orElse(List.of()).stream());
  }

  /** Whether its name stands nowhere on the sheet. */
  boolean isSpecialNotTaken(WrittenFact fact) {
    return !before.result().says().contains(value(fact, "name"));
  }

  boolean isNoSpecialTaken(Map<String, String> values) {
    return values.entrySet().stream()
        .filter(it -> it.getKey().matches("crib\\.special\\.[0-9]+\\.name"))
        .noneMatch(it -> before.result().says().contains(it.getValue()));
  }

  /** Whether the sheet asks to borrow the tool of the old name now, or does without it. */
  boolean isMissed(WrittenFact fact, MutatedShop.Result after) {
    String name = value(fact, "name");
    boolean borrowed =
        after.sheets().anyMatch(it -> Printed.evening(it).contains("Borrow: " + name));
    return before.result().tools().contains(name) && (borrowed || !after.tools().contains(name));
  }
}
