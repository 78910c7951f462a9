package courseworthy.sheet;

import java.util.List;

/**
 * A coach's sheet whose advice bears on what is shown. What it does not say of itself is empty.
 *
 * @param name    its title
 * @param author  whose advice it is
 * @param version in its author's words
 * @param licence as an SPDX identifier or in words
 * @param file    the path as typed
 * @param sha256  the SHA-256 digest of the file, in 64 hexadecimal digits
 * @param leftOut the rules that it leaves out, in the order written
 */
public record SheetInForce(String name, String author, String version, String licence, String file, String sha256, List<LeftOut> leftOut) {

    /** A rule that the sheet leaves out, why, and where it says so. */
    public record LeftOut(String rule, String because, String where) {
    }

    /** A sheet of which no more is known than its name. */
    public SheetInForce(String name, String author, String version, String licence, String file, String sha256) {
        this(name, author, version, licence, file, sha256, List.of());
    }

    public static SheetInForce of(Sheet sheet) {
        Sheet.Origin origin = sheet.origin();
        return new SheetInForce(sheet.title(), sheet.by(), origin.version(), origin.licence(), sheet.file(), origin.sha256(),
                sheet.leaveOuts().stream().map(each -> new LeftOut(each.rule(), each.because(), each.where().toString())).toList());
    }

    /** In the order in which they were given. */
    public static List<SheetInForce> of(List<Sheet> sheets) {
        return sheets.stream().map(SheetInForce::of).toList();
    }
}
