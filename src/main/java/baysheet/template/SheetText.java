package baysheet.template;

/** Placeholder. */
public record SheetText(String title) {}
