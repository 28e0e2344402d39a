package baysheet.box;

/** A text in one weight that a font must be able to print. */
public record Printed(String text, boolean bold) {}
