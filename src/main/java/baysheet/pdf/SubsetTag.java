package baysheet.pdf;

import java.util.SortedSet;

/** The six letters in front of a cut face's name (ISO 32000-1, 9.6.4). */
final class SubsetTag {
  private SubsetTag() {}

  /** Two cuts with other characters have another tag, the same characters always the same one. */
  static String of(SortedSet<Integer> characters) {
    long hash = 7;
    for (int character : characters) {
      hash = 31 * hash + character;
    }
    StringBuilder tag = new StringBuilder();
    for (int i = 0; i < 6; i++) {
      tag.append((char) ('A' + Math.floorMod(hash, 26)));
      hash = Math.floorDiv(hash, 26);
    }
    return tag.toString();
  }
}
