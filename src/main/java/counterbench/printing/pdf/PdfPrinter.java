package counterbench.printing.pdf;

import counterbench.printing.Document;
import counterbench.printing.LabelSheet;
import counterbench.printing.Printer;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
            save(pdf, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void save(PDDocument pdf, Path file) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(part)) {
                pdf.save(out);
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
