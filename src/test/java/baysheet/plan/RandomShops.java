package baysheet.plan;

import baysheet.books.Place;
import baysheet.resolve.ShopTexts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Shop folders that make no sense to a technician but hang together: up to twelve procedures behind
 * one another, some of them under a role that the bay chooses, up to six works at both ends, shared
 * and temporary items, steps at moments of their own, finals, overrides. Nothing built in knows any
 * of their names, but the built-in catalogue stands under some. The same seed gives the same
 * folder.
 */
final class RandomShops {
  static final String JOB = "2026-03-02/3.yaml";

  static final int MOST_PROCEDURES = 12;
  private static final int MOST_WORKS = 6;
  private static final int ITEMS = 6;
  private static final int FASTENERS = 3;
  private static final int TEMPORARY = 2;

  // One folder in so many has slips of its writer in its procedures.
  private static final int SLIPPING = 4;

  private final SplittableRandom random;
  private final boolean slips;

  /**
   * Seeds that once found a fault keep their folders: what was added later is drawn for wide ones.
   */
  private final boolean wide;

  /** Whether steps say at which heights they are done, with wheels, jacks and levers about. */
  private final boolean high;

  private final List<Place.Kind> kinds = new ArrayList<>();

  /** The role that the bay lets one of two procedures serve; empty for most procedures. */
  private final List<String> roles = new ArrayList<>();

  private RandomShops(long seed, boolean sound, boolean wide, boolean high) {
    this.high = high;
    this.random = new SplittableRandom(seed);
    this.slips = random.nextInt(SLIPPING) == 0 && !sound;
    this.wide = wide;
  }

  static ShopTexts of(long seed) {
    return new RandomShops(seed, false, false, false).shop();
  }

  /** One without slips of its writer. */
  static ShopTexts sound(long seed) {
    return new RandomShops(seed, true, false, false).shop();
  }

  /** One with roles, props, steps at moments of their own, and more ways of raising. */
  static ShopTexts wide(long seed) {
    return new RandomShops(seed, false, true, false).shop();
  }

  /** Such a one without slips of its writer. */
  static ShopTexts wideAndSound(long seed) {
    return new RandomShops(seed, true, true, false).shop();
  }

  /** Such a one in which steps and checks are done at certain heights of the vehicle. */
  static ShopTexts high(long seed) {
    return new RandomShops(seed, true, true, true).shop();
  }

  /** The same folder with the works of its job in another order. */
  static ShopTexts shuffled(long seed, ShopTexts shop) {
    List<String> lines = new ArrayList<>(shop.text(JOB).lines().toList());
    int first = lines.indexOf("work:") + 1;
    int end = first;
    while (end < lines.size() && lines.get(end).startsWith("  - ")) {
      end++;
    }
    Collections.shuffle(
        lines.subList(first, end), new Random(new SplittableRandom(seed).nextLong()));
    return shop.with(JOB, String.join("\n", lines) + "\n");
  }

  private ShopTexts shop() {
    int procedures = 1 + random.nextInt(MOST_PROCEDURES);
    for (int i = 0; i < procedures; i++) {
      kinds.add(one(List.of(Place.Kind.values())));
      roles.add(hits(5) ? "role" + i : "");
    }
    String jack = wide ? one(List.of("axle", "axle", "axle", "wheel", "side")) : "axle";
    ShopTexts shop =
        ShopTexts.empty()
            .with("shop.yaml", SHOP)
            .with("vehicles/any.yaml", book())
            .with("catalogue/own.yaml", ownCatalogue())
            .with("procedures/hoisted.yaml", raise("hoisted", "vehicle", "lift"))
            .with("procedures/jacked.yaml", raise("jacked", jack, "jack"));
    for (int i = 0; i < procedures; i++) {
      if (roles.get(i).isEmpty()) {
        shop = shop.with("procedures/p" + i + ".yaml", procedure(i, "p" + i, ""));
      } else {
        shop = served(shop, i, "lift");
        shop = served(shop, i, "jack");
      }
    }
    shop = shop.with(JOB, job());
    return hits(8) ? shop.withBuiltIn() : shop;
  }

  /** A procedure for one equipment, under the role that it shares with the one for the other. */
  private ShopTexts served(ShopTexts shop, int number, String bay) {
    String name = "p" + number + "-" + bay;
    String head = "serves: %s\nneeds: %s\n".formatted(roles.get(number), bay);
    return shop.with("procedures/" + name + ".yaml", procedure(number, name, head));
  }

  private String name(int number) {
    return roles.get(number).isEmpty() ? "p" + number : roles.get(number);
  }

  private static final String SHOP =
      """
      shop: Any
      crib:
        wrenches: []
        sockets: []
        stands: {rated: 2000 kg, each: yes, count: 4}
      bays:
        1: {lift: two-post, rated: 3000 kg}
        2: {jack: trolley, rated: 2500 kg}
      people:
        T1: {name: R. Fenwake, grade: technician}
      """;

  private static String raise(String name, String at, String needs) {
    return """
    procedure: %s
    title: Raise
    at: %s
    serves: up
    needs: %s
    open:
      - {do: Raise it, undo: feet, back: Lower it}
    """
        .formatted(name, at, needs);
  }

  private String book() {
    String groups =
        Stream.of("wheels", "axles", "sides", "engine", "vehicle")
            .map(group -> "  " + group + ":\n" + fasteners())
            .collect(Collectors.joining());
    return "vehicle: any\nname: Any\nsource: Any sheet\nkerb-mass: 1500 kg\nfront-share: 55 %\n"
        + "fasteners:\n"
        + groups;
  }

  private String fasteners() {
    return IntStream.range(0, FASTENERS)
        .mapToObj(
            i ->
                "    f%d: {count: %d, torque: %s%s%s}\n"
                    .formatted(
                        i,
                        1 + random.nextInt(4),
                        one(List.of("60 N·m", "snug", "unknown", "[20 N·m, +90°]")),
                        one(List.of("", ", final: on-the-ground", ", final: ride-height")),
                        one(List.of("", ", reuse: no"))))
        .collect(Collectors.joining());
  }

  private String ownCatalogue() {
    String own = wide ? catalogue() + COVERED : catalogue();
    return high
        ? own.replace("kinds: [k0]", "kinds: [k0, wheel]")
            .replace("kinds: [k4]", "kinds: [k4, inside]")
            .replace("strap, kinds: [temporary]", "strap, kinds: [temporary, jacked]")
            .replace("step: {while-off: i5}", "step: {while-off: i5" + height() + "}")
            .replace("while-off: k0, once: yes", "while-off: k0, once: yes" + height())
        : own;
  }

  /** Now and then heights at which a step can be done. */
  private String height() {
    return high && random.nextInt(6) == 0
        ? one(
            List.of(
                ", height: working",
                ", height: wheels-clear",
                ", height: [wheels-clear, stands]",
                ", height: [wheels-clear, working]",
                ", height: [ground, wheels-clear]",
                ", height: [ground, wheels-clear, stands]",
                ", height: ground"))
        : "";
  }

  private static String catalogue() {
    return "items:\n  feet: {name: on its wheels, kinds: [support]}\n"
        + "  oil: {name: oil, kinds: [circuit]}\n"
        + IntStream.range(0, FASTENERS)
            .mapToObj(i -> "  f%d: {name: fastener %d, kinds: [fastener]}\n".formatted(i, i))
            .collect(Collectors.joining())
        + IntStream.range(0, ITEMS)
            .mapToObj(i -> "  i%d: {name: item %d, kinds: [k%d]}\n".formatted(i, i, i))
            .collect(Collectors.joining())
        + "  t0: {name: prop, kinds: [temporary], back: Prop out}\n"
        + "  t1: {name: strap, kinds: [temporary]}\n"
        + "kinds:\n"
        + IntStream.range(0, ITEMS)
            .mapToObj(i -> "  k%d: an item of kind %d\n".formatted(i, i))
            .collect(Collectors.joining())
        + """
        cautions:
          c0: {signal: WARNING, when: {kind: k0}, do: Mind, hazard: it, consequence: or, source: us}
          c1: {signal: DANGER, do: Mind, hazard: it, consequence: or, source: us}
        consequences:
          r0: {when: {kind: k1}, check: Look first, moment: before-lifting, source: us}
          r1: {when: {kind: k2}, check: Look while up, moment: raised, source: us}
          r2: {when: {circuit: oil}, check: Look below, moment: before-lowering, source: us}
          r3: {when: {kind: k3}, check: Look last, moment: before-moving, source: us}
          r4: {when: {circuit: oil}, check: Bleed, moment: raised, step: {while-off: k0, once: yes}, source: us}
          r5: {when: {kind: k4}, check: See, moment: raised, step: {while-off: i5}, hold: yes, source: us}
          r6:
            when: {kind: k1}
            check: Run
            moment: raised
            step: {while-off: [k3, i0], once: yes, all-back: yes}
            needs: time
            source: us
        """;
  }

  private static final String COVERED =
      """
        r7:
          when: {kind: k5}
          check: See it bare
          moment: raised
          step: {before-covered: yes, while-off: [k0, i1]}
          hold: yes
          source: us
      """;

  private String procedure(int number, String name, String head) {
    StringBuilder text = new StringBuilder();
    text.append("procedure: %s\ntitle: Work %s\n%s".formatted(name, name, head));
    text.append("at: ").append(kinds.get(number).word()).append('\n');
    text.append("behind: ").append(behind(number)).append('\n');
    if (random.nextInt(4) == 0 && number > 0) {
      text.append("after: [%s]\n".formatted(name(random.nextInt(number))));
    }
    if (hits(8) && number + 1 < kinds.size()) {
      text.append(
          "before: [%s]\n".formatted(name(number + 1 + random.nextInt(kinds.size() - number - 1))));
    }
    List<String> names = items();
    int split = names.isEmpty() ? 0 : random.nextInt(names.size() + 1);
    text.append("open:\n  - {do: Begin %d%s}\n".formatted(number, height()));
    opening(number, names.subList(0, split), text);
    text.append(moment("Before", "before-lifting", number));
    opening(number, names.subList(split, names.size()), text);
    if (hits(5)) {
      text.append("  - {do: Prop %d, disturb: t%d}\n".formatted(number, random.nextInt(TEMPORARY)));
    }
    text.append("work:\n  - {do: Work %d%s%s}\n".formatted(number, extra(), height()));
    text.append(moment("Down", "on-the-ground", number));
    if (slips && random.nextInt(3) == 0) {
      text.append(slip());
    }
    if (!names.isEmpty() && random.nextInt(3) == 0) {
      text.append("close:\n  - {do: Close %d, do-up: %s}\n".formatted(number, names.get(0)));
    }
    return text.toString();
  }

  /** Now and then a step at a moment of its own. */
  private String moment(String what, String moment, int number) {
    return hits(8)
        ? "  - {do: %s %d, disturb: i5, moment: %s}\n".formatted(what, number, moment)
        : "";
  }

  /** A step of the work that takes off, puts on or comes at a moment as nobody would. */
  private String slip() {
    return "  - {do: Slip%s%s%s}\n"
        .formatted(
            one(
                List.of(
                    "", ", undo: i0", ", undo: [i1, f0]", ", do-up: i2", ", undo: i3, do-up: i0")),
            one(List.of("", ", disturb: i3", ", hazards: c0", ", hold: yes")),
            one(
                List.of(
                    "",
                    "",
                    ", moment: evening-before",
                    ", moment: before-lifting",
                    ", moment: raised",
                    ", moment: on-the-ground",
                    ", moment: road-test")));
  }

  private void opening(int number, List<String> names, StringBuilder text) {
    if (!names.isEmpty()) {
      text.append(
          "  - {do: Take %s off for %d, undo: %s%s}\n"
              .formatted(String.join(" ", names), number, names, height()));
    }
  }

  private String extra() {
    return one(List.of("", "", ", hazards: [c1]", ", open-circuit: oil", ", disturb: i5"));
  }

  /** Up to four names, none twice. */
  private List<String> items() {
    Set<String> names = new LinkedHashSet<>();
    int many = random.nextInt(5);
    for (int i = 0; i < many; i++) {
      names.add(
          random.nextInt(3) == 0 ? "f" + random.nextInt(FASTENERS) : "i" + random.nextInt(ITEMS));
    }
    return List.copyOf(names);
  }

  /** Access only to procedures before this one, so that it never runs in a circle. */
  private String behind(int number) {
    Set<String> behind = new LinkedHashSet<>();
    boolean unplaced = kinds.get(number) == Place.Kind.ENGINE;
    if (random.nextInt(2) == 0) {
      behind.add(unplaced ? "up at front" : "up");
    }
    for (int i = 0; i < number; i++) {
      if (random.nextInt(4) == 0) {
        behind.add(name(i) + (unplaced ? " at " + place(kinds.get(i)) : ""));
      }
    }
    return behind.toString();
  }

  private Place place(Place.Kind kind) {
    return one(Stream.of(Place.values()).filter(place -> place.kind() == kind).toList());
  }

  private String job() {
    Set<String> works = new LinkedHashSet<>();
    int many = 1 + random.nextInt(MOST_WORKS);
    for (int i = 0; i < many; i++) {
      int number = random.nextInt(kinds.size());
      works.add("  - %s at %s\n".formatted(name(number), place(kinds.get(number))));
    }
    String over =
        random.nextInt(10) == 0
            ? "override:\n  f0 at vehicle: {torque: 70 N·m, source: note}\n"
            : "";
    return "job: 3\nvehicle: {book: any}\nbay: %d\nby: T1\nwork:\n%s%s"
        .formatted(1 + random.nextInt(2), String.join("", works), over);
  }

  /** Once in so many times, in a wide folder. */
  private boolean hits(int times) {
    return wide && random.nextInt(times) == 0;
  }

  private <T> T one(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
