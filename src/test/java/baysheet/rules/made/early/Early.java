package baysheet.rules.made.early;

import baysheet.rules.made.late.Late;
import org.yaml.snakeyaml.Yaml;

/** Breaks the rules of architecture, so that each can be seen to bite; never run. */
public record Early(Late late, Yaml library) {
  static int changes = 1;
}
