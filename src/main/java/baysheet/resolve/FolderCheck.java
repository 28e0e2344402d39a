package baysheet.resolve;

import baysheet.books.FastenerCheck;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Whether a shop folder holds together, whatever jobs come: names between its files. */
public final class FolderCheck {
  private FolderCheck() {}

  /** Adds what does not hold. */
  public static void check(ShopFolder folder, Problems problems) {
    folder.books().values().forEach(book -> check(book, folder, problems));
    NameRule names = new NameRule(folder.catalogue(), problems);
    Set<String> procedures = procedures(folder);
    for (Procedure procedure : folder.procedures().values()) {
      names.check(procedure);
      procedure
          .behind()
          .forEach(access -> known(access.map(Procedure.Access::procedure), procedures, problems));
      procedure.after().forEach(name -> known(name, procedures, problems));
      procedure.before().forEach(name -> known(name, procedures, problems));
    }
  }

  /** A book needs every fastener whole, in itself or through what it is like. */
  private static void check(SpecBook book, ShopFolder folder, Problems problems) {
    LikeRule.apply(book, folder, problems)
        .ifPresent(
            effective ->
                effective.entries().forEach((key, merged) -> whole(key, merged, problems)));
  }

  private static void whole(EffectiveBook.Key key, EffectiveBook.Merged merged, Problems problems) {
    if (merged.text().complete(merged.name()).isEmpty()) {
      problems.add(FastenerRule.incomplete(key.name() + " under " + key.group(), merged));
    }
    FastenerCheck.check(merged.text(), problems);
  }

  /** Names by which access can be asked for. */
  private static Set<String> procedures(ShopFolder folder) {
    Set<String> known = new LinkedHashSet<>(folder.procedures().keySet());
    for (Map.Entry<String, Procedure> entry : folder.procedures().entrySet()) {
      entry.getValue().serves().ifPresent(serves -> known.add(serves.value()));
    }
    return known;
  }

  private static void known(Located<String> name, Set<String> known, Problems problems) {
    if (!known.contains(name.value())) {
      problems.add(
          Problem.of(
                  ProblemCode.UNKNOWN_PROCEDURE,
                  name.at(),
                  "there is no procedure \"" + name.value() + "\"")
              .near(Nearest.of(name.value(), known)));
    }
  }
}
