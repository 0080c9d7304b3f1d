package counterbench.printing.pdf;

import counterbench.home.WholeFile;
import counterbench.printing.Document;
import counterbench.printing.LabelSheet;
import counterbench.printing.Printer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Draws into PDF files. */
public final class PdfPrinter implements Printer {
    private static final String PROGRAM = "Counterbench";

    /** Draws into a file that is open. */
    @FunctionalInterface
    private interface Drawing {
        void draw(PDDocument file) throws IOException;
    }

    @Override
    public void print(LabelSheet sheet, Path file) {
        print("Labels", file, pdf -> new LabelPages(pdf, sheet).draw());
    }

    @Override
    public void print(Document document, Path file) {
        print(
                document.title(),
                file,
                pdf -> {
                    try (PageFlow pages = new PageFlow(pdf, document)) {
                        new DocumentPages(pages).draw(document);
                    }
                });
    }

    private static void print(String title, Path file, Drawing drawing) {
        try (PDDocument pdf = new PDDocument()) {
            PDDocumentInformation said = pdf.getDocumentInformation();
            said.setTitle(title);
            said.setCreator(PROGRAM);
            drawing.draw(pdf);
            WholeFile.write(file, pdf::save);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
