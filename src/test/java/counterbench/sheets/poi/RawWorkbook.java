package counterbench.sheets.poi;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes workbooks of one sheet by hand, so that tests can put anything into them. */
final class RawWorkbook {
    private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    private static final String PACKAGE =
            "http://schemas.openxmlformats.org/package/2006/relationships";
    private static final String OFFICE =
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String TYPE =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private RawWorkbook() {}

    /** Writes the sheet's part. */
    interface Part {
        void write(OutputStream out) throws IOException;
    }

    static Path write(Path file, String sheet, String sheetXml) throws IOException {
        return write(file, sheet, out -> out.write(sheetXml.getBytes(StandardCharsets.UTF_8)));
    }

    static Path write(Path file, String sheet, Part part) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            entry(zip, "[Content_Types].xml", text(contentTypes()));
            entry(zip, "_rels/.rels", text(relation("officeDocument", "xl/workbook.xml")));
            entry(zip, "xl/workbook.xml", text(workbook(sheet)));
            entry(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    text(relation("worksheet", "worksheets/sheet1.xml")));
            entry(zip, "xl/worksheets/sheet1.xml", part);
        }
        return file;
    }

    private static void entry(ZipOutputStream zip, String name, Part part) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        part.write(zip);
        zip.closeEntry();
    }

    private static Part text(String text) {
        return out -> out.write((XML + text).getBytes(StandardCharsets.UTF_8));
    }

    private static String contentTypes() {
        return "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                + "<Default Extension=\"rels\" ContentType=\""
                + "application/vnd.openxmlformats-package.relationships+xml\"/>"
                + "<Override PartName=\"/xl/workbook.xml\" ContentType=\""
                + TYPE
                + "sheet.main+xml\"/>"
                + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\""
                + TYPE
                + "worksheet+xml\"/></Types>";
    }

    private static String relation(String type, String target) {
        return "<Relationships xmlns=\""
                + PACKAGE
                + "\"><Relationship Id=\"r1\" Type=\""
                + OFFICE
                + "/"
                + type
                + "\" Target=\""
                + target
                + "\"/></Relationships>";
    }

    private static String workbook(String sheet) {
        return "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
                + " xmlns:r=\""
                + OFFICE
                + "\"><sheets><sheet name=\""
                + sheet
                + "\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>";
    }
}
