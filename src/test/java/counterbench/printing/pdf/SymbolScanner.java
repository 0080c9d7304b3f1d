package counterbench.printing.pdf;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import counterbench.labels.gs1.ElementString;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Looks at drawn pages as a person or a scanner does. */
public final class SymbolScanner {
    private static final int DOTS_AN_INCH = 300;

    private SymbolScanner() {}

    /** The words of all pages. */
    public static String words(Path file) {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** How many pages there are. */
    public static int pages(Path file) {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return pdf.getNumberOfPages();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /**
     * What a scanner types for the symbols in areas of a page, with the prefix that names the kind
     * of symbol.
     */
    public static List<String> scans(Path file, int page, List<Area> areas) {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(page, DOTS_AN_INCH);
            List<String> scans = new ArrayList<>();
            for (Area area : areas) {
                scans.add(scan(symbolIn(cut(image, area))));
            }
            return scans;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static BufferedImage cut(BufferedImage page, Area area) {
        float dots = DOTS_AN_INCH / 72f;
        return page.getSubimage(
                Math.round(area.left() * dots),
                Math.round(area.top() * dots),
                Math.round(area.width() * dots),
                Math.round(area.height() * dots));
    }

    /** Aims at the symbol, which stands right of the longest upright line, its left side. */
    private static BufferedImage symbolIn(BufferedImage image) {
        int left = 0;
        int side = 0;
        int top = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            int run = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                run = isDark(image, x, y) ? run + 1 : 0;
                if (run > side) {
                    left = x;
                    side = run;
                    top = y + 1 - run;
                }
            }
        }
        int rim = Math.min(Math.min(left, top), side / 20);
        return image.getSubimage(left - rim, top - rim, side + 2 * rim, side + 2 * rim);
    }

    private static boolean isDark(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 0xff) < 128;
    }

    private static String scan(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] dots = image.getRGB(0, 0, width, height, null, 0, width);
        BinaryBitmap bitmap =
                new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots)));
        try {
            Result result =
                    new DataMatrixReader().decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true));
            // The library also tells the FNC1 with which every GS1 symbol begins; the prefix does.
            return result.getResultMetadata().get(ResultMetadataType.SYMBOLOGY_IDENTIFIER)
                    + result.getText().replaceFirst("^" + ElementString.SEPARATOR, "");
        } catch (NotFoundException
                | com.google.zxing.ChecksumException
                | com.google.zxing.FormatException e) {
            throw new AssertionError("no symbol can be read", e);
        }
    }
}
