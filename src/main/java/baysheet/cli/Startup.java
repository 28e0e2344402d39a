package baysheet.cli;

import baysheet.files.Writers;
import baysheet.layout.Fonts;
import baysheet.output.AsyncValue;
import baysheet.template.LayoutTemplates;
import java.util.concurrent.CompletableFuture;

/**
 * What every run that makes sheets needs, begun on other threads while its command line is read and
 * then its books.
 *
 * @param layouts those that come with the tool
 */
record Startup(AsyncValue<Fonts> fonts, AsyncValue<LayoutTemplates> layouts, Writers writers) {
  static Startup start() {
    AsyncValue<Fonts> fonts = AsyncValue.start(Fonts::builtIn);
    AsyncValue<LayoutTemplates> layouts = AsyncValue.start(LayoutTemplates::builtIn);
    Writers writers = new Writers();
    // If making one fails here, it fails again, and is reported, where it is needed.
    CompletableFuture.runAsync(writers::prepare);
    return new Startup(fonts, layouts, writers);
  }
}
