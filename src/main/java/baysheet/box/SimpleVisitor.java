package baysheet.box;

/** A visitor to which most kinds of box are alike. */
public abstract class SimpleVisitor<R> implements BoxVisitor<R> {
  /** What is done with every kind that has no method of its own. */
  protected abstract R defaultAction(Box box);

  @Override
  public R text(Text box) {
    return defaultAction(box);
  }

  @Override
  public R row(Row box) {
    return defaultAction(box);
  }

  @Override
  public R column(Column box) {
    return defaultAction(box);
  }

  @Override
  public R columns(Columns box) {
    return defaultAction(box);
  }

  @Override
  public R held(KeepWithNext box) {
    return defaultAction(box);
  }

  @Override
  public R table(Table box) {
    return defaultAction(box);
  }

  @Override
  public R items(Items box) {
    return defaultAction(box);
  }

  @Override
  public R rule(Rule box) {
    return defaultAction(box);
  }

  @Override
  public R frame(Frame box) {
    return defaultAction(box);
  }

  @Override
  public R field(Field box) {
    return defaultAction(box);
  }

  @Override
  public R drawing(Drawing box) {
    return defaultAction(box);
  }

  @Override
  public R stamp(Stamp box) {
    return defaultAction(box);
  }

  @Override
  public R droppable(Droppable box) {
    return defaultAction(box);
  }

  @Override
  public R space(Space box) {
    return defaultAction(box);
  }

  @Override
  public R fill(Fill box) {
    return defaultAction(box);
  }
}
