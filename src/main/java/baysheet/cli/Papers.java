package baysheet.cli;

import baysheet.books.Shop;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The option for the size of paper. */
final class Papers {
  private Papers() {}

  static OptionSpec option() {
    return Options.one("--paper", "A4|Letter", String.class, "Paper, in place of the shop's.");
  }

  static Optional<Shop.Paper> given(OptionSpec paper, CommandLine command) {
    return Options.<String>given(paper)
        .map(
            word ->
                List.of(Shop.Paper.values()).stream()
                    .filter(size -> size.word().equals(word))
                    .findFirst()
                    .orElseThrow(
                        () ->
                            new WrongCommandLine(
                                command, "--paper takes A4 or Letter, not \"" + word + '"')));
  }
}
