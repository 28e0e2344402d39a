package baysheet.output;

import baysheet.layout.Fit;
import baysheet.layout.Page;
import baysheet.record.SheetId;
import baysheet.sheet.Sheet;

/**
 * A sheet that is ready to be drawn.
 *
 * @param record its data as JSON; not copied, so leave it alone
 */
public record MadeSheet(Sheet sheet, SheetId id, Page page, Fit fit, byte[] record) {}
