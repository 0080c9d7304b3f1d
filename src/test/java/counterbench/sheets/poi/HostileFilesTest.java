package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.sheets.Read;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each file that would do harm or is not what it seems gets one refusal. */
class HostileFilesTest {
    private static final String SHEET =
            "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">";
    private static final String HEADINGS =
            "<row><c t=\"inlineStr\"><is><t>name</t></is></c>"
                    + "<c t=\"inlineStr\"><is><t>roles</t></is></c></row>";

    @TempDir Path folder;

    private void refusedOnce(Path file, String why) {
        assertThat(Read.refusal(file)).singleElement().asString().contains(why);
    }

    private Path workbook(RawWorkbook.Part sheet) throws IOException {
        return RawWorkbook.write(folder.resolve("people.xlsx"), "people", sheet);
    }

    private static void repeat(OutputStream out, String text, long bytes) throws IOException {
        byte[] chunk = text.repeat(1 + 65_536 / text.length()).getBytes(StandardCharsets.US_ASCII);
        for (long written = 0; written < bytes; written += chunk.length) {
            out.write(chunk);
        }
    }

    private static void write(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void a_zip_bomb_is_refused() throws IOException {
        Path file =
                workbook(
                        out -> {
                            write(out, SHEET + "<sheetData>" + HEADINGS);
                            repeat(out, " ", 200_000_000);
                            write(out, "</sheetData></worksheet>");
                        });
        assertThat(Files.size(file)).isLessThan(1_000_000);
        refusedOnce(file, "people.xlsx: unpacks to far more than a sheet of its size");
    }

    @Test
    void a_cell_of_200_megabytes_in_a_workbook_is_refused() throws IOException {
        Path file =
                workbook(
                        out -> {
                            write(out, SHEET + "<sheetData>" + HEADINGS);
                            write(out, "<row><c t=\"inlineStr\"><is><t>");
                            repeat(out, "x", 200_000_000);
                            write(out, "</t></is></c></row></sheetData></worksheet>");
                        });
        refusedOnce(file, "people.xlsx, sheet people, row 2: has a cell longer than 32767");
    }

    @Test
    void an_attribute_without_end_is_refused() throws IOException {
        Path file =
                workbook(
                        out -> {
                            write(out, SHEET + "<sheetData>" + HEADINGS + "<row r=\"");
                            Random random = new Random(7);
                            for (int i = 0; i < 3_000_000; i++) {
                                out.write('a' + random.nextInt(26));
                            }
                            write(out, "\"/></sheetData></worksheet>");
                        });
        refusedOnce(file, "people.xlsx, sheet people, row 1: has a cell longer than any cell");
    }

    @Test
    void an_external_entity_is_refused() throws IOException {
        Path secret = Read.file(folder, "secret.txt", "not for sheets");
        String doctype = "<!DOCTYPE a [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>";
        String row = "<row><c t=\"inlineStr\"><is><t>&e;</t></is></c></row>";
        String xml = doctype + SHEET + "<sheetData>" + HEADINGS + row + "</sheetData></worksheet>";
        Path file = RawWorkbook.write(folder.resolve("people.xlsx"), "people", xml);
        refusedOnce(file, "people.xlsx: declares a document type");
    }

    @Test
    void entities_that_multiply_are_refused() throws IOException {
        String doctype =
                "<!DOCTYPE a [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;\">"
                        + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;\">]>";
        String xml = doctype + SHEET + "<sheetData>&c;</sheetData></worksheet>";
        Path file = RawWorkbook.write(folder.resolve("people.xlsx"), "people", xml);
        refusedOnce(file, "declares a document type");
    }

    @Test
    void more_columns_than_a_sheet_has_are_refused() throws IOException {
        String row = "<row r=\"2\"><c r=\"XFE2\"><v>1</v></c></row>";
        String xml = SHEET + "<sheetData>" + HEADINGS + row + "</sheetData></worksheet>";
        Path file = RawWorkbook.write(folder.resolve("people.xlsx"), "people", xml);
        refusedOnce(file, "people.xlsx, sheet people, row 2: has more than 16384 columns");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<row r=\"0\"><c><v>1</v></c></row>",
                "<row r=\"9999999\"><c><v>1</v></c></row>",
                "<row><c r=\"A2\"><v>1</v></c><c r=\"A2\"><v>2</v></c></row>",
                "<row><c><v>1x</v></c></row>",
                "<row><c t=\"s\"><v>7</v></c></row>",
                "<row><c>",
                "<row><c><v>1</v></c></row>\u0000"
            })
    void a_damaged_sheet_is_refused(String row) throws IOException {
        String xml = SHEET + "<sheetData>" + HEADINGS + row + "</sheetData></worksheet>";
        Path file = RawWorkbook.write(folder.resolve("people.xlsx"), "people", xml);
        refusedOnce(file, "people.xlsx: is damaged or no .xlsx workbook");
    }

    @Test
    void a_workbook_that_was_cut_off_is_refused() throws IOException {
        Path file = RawWorkbook.write(folder.resolve("people.xlsx"), "people", SHEET);
        byte[] bytes = Files.readAllBytes(file);
        refusedOnce(
                Read.file(folder, "people.xlsx", Arrays.copyOf(bytes, bytes.length / 2)),
                "is damaged or no .xlsx workbook");
        refusedOnce(Read.file(folder, "people.xlsx", "PK\u0003\u0004"), "is damaged");
    }

    @Test
    void files_that_are_no_workbook_are_refused() throws IOException {
        refusedOnce(
                Read.file(folder, "people.xlsx", "name,roles\nAda,lead\n"),
                "is no workbook, whatever its name says");
        refusedOnce(Read.file(folder, "people.xlsx", ""), "is no workbook");
        ByteArrayOutputStream old = new ByteArrayOutputStream();
        try (HSSFWorkbook workbook = new HSSFWorkbook()) {
            workbook.createSheet("people");
            workbook.write(old);
        }
        refusedOnce(
                Read.file(folder, "people.xlsx", old.toByteArray()),
                "is a workbook of an old format");
        refusedOnce(
                Read.file(folder, "people.csv", old.toByteArray()),
                "is a workbook of an old format");
    }

    @Test
    void a_workbook_named_csv_is_refused() throws IOException {
        Path file = RawWorkbook.write(folder.resolve("people.csv"), "people", SHEET);
        refusedOnce(file, "is a workbook and not a CSV file; give its name the ending .xlsx");
    }

    @Test
    void a_workbook_locked_by_a_password_is_refused() throws Exception {
        ByteArrayOutputStream locked = new ByteArrayOutputStream();
        try (POIFSFileSystem ole = new POIFSFileSystem();
                XSSFWorkbook workbook = new XSSFWorkbook()) {
            workbook.createSheet("people");
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.standard).getEncryptor();
            encryptor.confirmPassword("washer");
            try (OutputStream out = encryptor.getDataStream(ole)) {
                workbook.write(out);
            }
            ole.writeFilesystem(locked);
        }
        refusedOnce(
                Read.file(folder, "people.xlsx", locked.toByteArray()),
                "is locked by a password; save it without a password");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32LE", "UTF-32BE"})
    void csv_in_other_encodings_is_refused_by_name(String charset) {
        byte[] bytes = "name,roles\nAda,lead\n".getBytes(Charset.forName(charset));
        refusedOnce(
                Read.file(folder, "people.csv", bytes),
                "people.csv: is written in UTF-16 or UTF-32; save it as CSV in UTF-8");
    }

    @Test
    void a_nul_character_in_csv_is_refused() {
        refusedOnce(
                Read.file(folder, "people.csv", "name,roles\nA\0da,lead\n"),
                "people.csv, row 2: holds a NUL character");
    }

    @Test
    void a_cell_of_200_megabytes_in_csv_is_refused() throws IOException {
        Path file = folder.resolve("people.csv");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            write(out, "name,roles\n\"");
            repeat(out, "x", 200_000_000);
            write(out, "\",lead\n");
        }
        refusedOnce(file, "people.csv, row 2: a cell is longer than");
        Files.delete(file);
        refusedOnce(
                Read.file(folder, "people.csv", "name,roles\n" + "x".repeat(32_768) + ",lead\n"),
                "people.csv, row 2: a cell is longer than 32767 characters");
    }

    @Test
    void ten_million_columns_in_csv_are_refused() throws IOException {
        Path file = folder.resolve("people.csv");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            write(out, "name,roles");
            repeat(out, ",x", 20_000_000);
        }
        refusedOnce(file, "people.csv, row 1: has more than 16384 columns");
    }
}
