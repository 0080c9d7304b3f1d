package counterbench.sheets.poi;

import counterbench.shared.Refused;
import counterbench.sheets.RowEstimate;
import counterbench.sheets.RowSink;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.util.ZipFileZipEntrySource;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.util.IOUtils;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.jspecify.annotations.Nullable;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** A workbook opened for reading. Every way in which a file can be unusable is one refusal. */
final class OpenWorkbook implements AutoCloseable {
    private static final String WORKBOOK = XSSFRelation.WORKBOOK.getContentType();

    private final Path file;
    private final OPCPackage zip;
    private final XSSFReader parts;
    private final WorkbookParts.Contents contents;

    private OpenWorkbook(Path file, OPCPackage zip)
            throws IOException, OpenXML4JException, SAXException {
        this.file = file;
        this.zip = zip;
        this.parts = new XSSFReader(zip, true);
        WorkbookParts handler = new WorkbookParts();
        parse(parts.getWorkbookData(), handler);
        this.contents = handler.contents();
    }

    static OpenWorkbook open(Path file) {
        FileHead.refuseOthers(file);
        OPCPackage zip = zip(file);
        try {
            return new OpenWorkbook(file, zip);
        } catch (IOException | OpenXML4JException | SAXException | RuntimeException e) {
            zip.revert();
            throw because(file, e);
        }
    }

    /** The file's parts by its table of contents; a file without one is not searched for parts. */
    private static OPCPackage zip(Path file) {
        ZipFileZipEntrySource entries = null;
        try {
            entries = new ZipFileZipEntrySource(new ZipSecureFile(file.toFile()));
            return OPCPackage.open(entries);
        } catch (IOException | OpenXML4JException | RuntimeException e) {
            IOUtils.closeQuietly(entries);
            throw because(file, e);
        }
    }

    /** The names of the sheets, in their order. */
    List<String> sheetNames() {
        return contents.sheets().stream().map(WorkbookParts.Entry::name).toList();
    }

    /** Hands every row of a sheet over. */
    void read(Sheet sheet, RowSink rows) {
        RowHandler handler = null;
        try {
            handler = new RowHandler(sheet, cells(), rows);
            parse(parts.getSheet(contents.idOf(sheet.name())), handler);
        } catch (IOException | OpenXML4JException | SAXException | RuntimeException e) {
            if (handler != null && handler.failure() != null) {
                throw handler.failure();
            }
            if (handler != null && e instanceof TooMuch tooMuch) {
                throw new Refused(handler.shown(), tooMuch.because(), tooMuch.todo());
            }
            throw because(file, e);
        }
        handler.finish();
    }

    /** About how many rows a sheet has. */
    long aboutRows(Sheet sheet) {
        try {
            PackagePart workbook = zip.getPartsByContentType(WORKBOOK).get(0);
            PackagePart part =
                    workbook.getRelatedPart(workbook.getRelationship(contents.idOf(sheet.name())));
            try (InputStream text = part.getInputStream()) {
                return RowEstimate.of(text, part.getSize(), "<row");
            }
        } catch (IOException | OpenXML4JException | RuntimeException e) {
            // Reading will say what is wrong.
            return RowEstimate.UNKNOWN;
        }
    }

    private CellTypes cells() throws IOException, OpenXML4JException, SAXException {
        SharedTexts texts = new SharedTexts();
        parse(only(XSSFRelation.SHARED_STRINGS), texts);
        NumberFormats formats = new NumberFormats();
        parse(only(XSSFRelation.STYLES), formats);
        return new CellTypes(texts, formats, contents.from1904());
    }

    /** A part that a workbook may have once. */
    private @Nullable InputStream only(XSSFRelation relation) throws IOException {
        List<PackagePart> found = zip.getPartsByContentType(relation.getContentType());
        return found.isEmpty() ? null : found.get(0).getInputStream();
    }

    private static void parse(@Nullable InputStream part, DefaultHandler to)
            throws IOException, SAXException {
        if (part != null) {
            try (part) {
                Xml.parse(part, to);
            }
        }
    }

    private static Refused because(Path file, Exception e) {
        if (e instanceof TooMuch tooMuch) {
            return SheetFiles.refused(file, tooMuch.because(), tooMuch.todo());
        }
        String message = String.valueOf(e.getMessage());
        if (message.contains("Zip bomb") || message.contains("exceed")) {
            return SheetFiles.refused(
                    file, "unpacks to far more than a sheet of its size", "save it again");
        }
        if (message.contains("DOCTYPE")) {
            return SheetFiles.refused(
                    file, "declares a document type, which no workbook does", "save it again");
        }
        return SheetFiles.refused(
                file, "is damaged or no .xlsx workbook", "open it and save it again as .xlsx");
    }

    @Override
    public void close() {
        zip.revert();
    }
}
