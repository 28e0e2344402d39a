package baysheet.wording;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Remark;
import baysheet.report.ProblemCode;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.sheet.TorqueLine.Arrangement;
import baysheet.sheet.TorqueLine.Kind;
import baysheet.sheet.TorqueLine.Reuse;
import baysheet.sheet.TorqueLine.StageLine;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.TighteningOrder;
import baysheet.torque.TighteningPasses;
import baysheet.torque.Treatment;
import java.util.List;
import java.util.Optional;

/** Writes a torque line down; what is not said is absent. */
public final class LineMaker {
  private final int n;
  private final String words;
  private final List<Place> places;
  private final int count;
  private Optional<String> thread = Optional.empty();
  private Optional<String> strength = Optional.empty();
  private Optional<Head> head = Optional.empty();
  private Optional<TorqueLine.SocketNeed> socket = Optional.empty();
  private Kind kind = Kind.SNUG;
  private List<StageLine> stages = List.of();
  private TighteningPasses passes = TighteningPasses.ONE;
  private List<Integer> order = List.of();
  private Optional<TorqueLine.OrderDrawing> drawing = Optional.empty();
  private Treatment threads = Treatment.DRY;
  private Reuse reuse = Reuse.AGAIN;
  private Optional<Fastener.Lock> lock = Optional.empty();
  private List<Remark> remarks = List.of();
  private Moment moment = Moment.RAISED;
  private boolean rideHeight;
  private boolean twoVisits;
  private Optional<Quantity> recheck = Optional.empty();
  private boolean overridden;
  private List<TorqueLine.Warning> warnings = List.of();

  public LineMaker(int n, String words, List<Place> places, int count) {
    this.n = n;
    this.words = words;
    this.places = places;
    this.count = count;
  }

  public LineMaker thread(String designation, String strengthClass) {
    thread = Optional.of(designation);
    strength = SampleLines.some(strengthClass);
    return this;
  }

  public LineMaker head(String form, String drive, int points) {
    head = Optional.of(SampleLines.head(form));
    socket =
        Optional.of(
            new TorqueLine.SocketNeed(
                SampleLines.drive(drive), points, false, false, true, Optional.empty()));
    return this;
  }

  public LineMaker stages(StageLine... all) {
    stages = List.of(all);
    kind = Kind.PUBLISHED;
    return this;
  }

  public LineMaker unknown() {
    kind = Kind.UNKNOWN;
    return this;
  }

  public LineMaker circle(String letter) {
    order = TighteningOrder.circle(count);
    drawing = Optional.of(new TorqueLine.OrderDrawing(letter, Arrangement.CIRCLE, List.of()));
    passes = TighteningPasses.HALF_THEN_FULL;
    return this;
  }

  public LineMaker rows(String letter, Integer... rows) {
    order = TighteningOrder.rows(List.of(rows));
    drawing = Optional.of(new TorqueLine.OrderDrawing(letter, Arrangement.ROWS, List.of(rows)));
    return this;
  }

  public LineMaker given(String letter, List<Integer> positions) {
    order = positions;
    drawing =
        Optional.of(
            new TorqueLine.OrderDrawing(letter, Arrangement.NUMBERED_BY_THE_SOURCE, List.of()));
    return this;
  }

  public LineMaker threads(Treatment treatment) {
    threads = treatment;
    return this;
  }

  public LineMaker reuse(Reuse again) {
    reuse = again;
    return this;
  }

  public LineMaker lock(Fastener.Lock how) {
    lock = Optional.of(how);
    return this;
  }

  public LineMaker note(String word) {
    return remarks(new Remark(Remark.NOTE, word));
  }

  public LineMaker remarks(Remark... all) {
    remarks = List.of(all);
    return this;
  }

  public LineMaker onTheGround() {
    moment = Moment.ON_THE_GROUND;
    twoVisits = true;
    return this;
  }

  public LineMaker atRideHeight() {
    rideHeight = true;
    return onTheGround();
  }

  public LineMaker recheck(Quantity distance) {
    recheck = Optional.of(distance);
    return this;
  }

  public LineMaker overridden() {
    overridden = true;
    return this;
  }

  public LineMaker warning(String text) {
    warnings = List.of(new TorqueLine.Warning(ProblemCode.WRENCH, new Statement.Written(text)));
    return this;
  }

  /** Every round on the wrench of the last torque, set to its share. */
  private List<TorqueLine.Round> rounds() {
    if (passes.percents().size() < 2
        || !(stages.get(stages.size() - 1) instanceof StageLine.Torque last)) {
      return List.of();
    }
    return passes.percents().stream()
        .map(
            percent -> {
              Quantity share = last.target().times(percent.movePointLeft(2));
              return new TorqueLine.Round(
                  percent, share, last.wrench(), Optional.of(share), Optional.empty());
            })
        .toList();
  }

  public TorqueLine build() {
    return new TorqueLine(
        n,
        words.replace(' ', '-'),
        words,
        places,
        count,
        kind,
        new TorqueLine.Hardware(thread, strength, head, socket),
        new TorqueLine.Method(stages, passes, rounds(), order, drawing),
        new TorqueLine.Refitting(threads, reuse, lock, remarks),
        new TorqueLine.Visits(moment, rideHeight, twoVisits, recheck),
        new TorqueLine.Origin(
            "Larkfell works data sheet 4, 2016", overridden, Optional.empty(), warnings));
  }
}
