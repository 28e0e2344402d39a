package baysheet.rules.made.late;

/** What stands behind {@link baysheet.rules.made.early.Early} and may not be imported there. */
public record Late() {}
