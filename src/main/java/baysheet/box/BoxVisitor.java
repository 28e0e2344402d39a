package baysheet.box;

/** Treats each kind of box in its own way. */
public interface BoxVisitor<R> {
  R text(Text box);

  R row(Row box);

  R column(Column box);

  R columns(Columns box);

  R held(KeepWithNext box);

  R table(Table box);

  R items(Items box);

  R rule(Rule box);

  R frame(Frame box);

  R field(Field box);

  R drawing(Drawing box);

  R stamp(Stamp box);

  R droppable(Droppable box);

  R space(Space box);

  R fill(Fill box);
}
