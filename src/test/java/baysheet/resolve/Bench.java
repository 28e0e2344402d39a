package baysheet.resolve;

/** A small garage in which the tests of names and places put one thing wrong at a time. */
final class Bench {
  static final String JOB = "2026-03-02/7.yaml";

  private Bench() {}

  static ShopTexts shop() {
    return ShopTexts.empty()
        .with(
            "shop.yaml",
            """
            shop: Mill Lane
            crib:
              wrenches: []
              sockets: []
            bays:
              1: {lift: two-post, rated: 3000 kg}
              floor: {jack: trolley, rated: 2500 kg}
            people:
              T1: {name: R. Fenwake, grade: technician}
              A1: {name: S. Loddon, grade: apprentice}
            """)
        .with(
            "vehicles/heron.yaml",
            """
            vehicle: heron
            name: Heron
            source: Heron sheet 3
            kerb-mass: 1300 kg
            fasteners:
              wheels:
                wheel-nut: {count: 5, torque: 110 N·m}
              front-wheels:
                arm-bolt: {count: 2, torque: 95 N·m}
              front:
                bar-bolt: {count: 4, torque: 40 N·m}
            """)
        .with(
            "catalogue/own.yaml",
            """
            items:
              on-its-wheels: {name: vehicle on its wheels, kinds: [support]}
              wheel: {name: wheel, kinds: [wheel]}
              brake-fluid: {name: brake fluid, kinds: [circuit]}
            cautions:
              hot-oil: {signal: WARNING, do: Wait, hazard: hot oil, consequence: burns, source: from memory}
            states:
              rusty: {likely: 1.5, possible: 1.2, source: from memory}
            """)
        .with("procedures/raise-lift.yaml", raise("raise-lift", "vehicle", "lift"))
        .with("procedures/raise-jack.yaml", raise("raise-jack", "axle", "jack"))
        .with("procedures/wheel-off.yaml", work("wheel-off", "wheel", "[raise]", "wheel-nut"))
        .with("procedures/arm.yaml", work("arm", "wheel", "[wheel-off]", "arm-bolt"))
        .with("procedures/bar.yaml", work("bar", "axle", "[wheel-off]", "bar-bolt"))
        .with(
            JOB,
            """
            job: 7
            vehicle: {book: heron}
            bay: 1
            by: T1
            work:
              - arm at front-left
            """);
  }

  static String raise(String name, String at, String needs) {
    return """
    procedure: %s
    title: Raise
    at: %s
    serves: raise
    needs: %s
    open:
      - {do: Raise it, undo: on-its-wheels}
    """
        .formatted(name, at, needs);
  }

  /** A procedure that undoes one item; the item stands in line 6, from column 27. */
  static String work(String name, String at, String behind, String item) {
    return """
    procedure: %s
    title: Some work
    at: %s
    behind: %s
    open:
      - {do: Take it off, undo: %s}
    """
        .formatted(name, at, behind, item);
  }
}
