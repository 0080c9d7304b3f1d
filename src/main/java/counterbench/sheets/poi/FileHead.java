package counterbench.sheets.poi;

import counterbench.shared.Refused;
import counterbench.sheets.SheetFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.EmptyFileException;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Tells by its first bytes that a file is no workbook of Office Open XML. */
final class FileHead {
    private FileHead() {}

    static void refuseOthers(Path file) {
        switch (magic(file)) {
            case OOXML -> {}
            case OLE2 -> throw oldOrLocked(file);
            default ->
                    throw SheetFiles.refused(
                            file,
                            "is no workbook, whatever its name says",
                            "save it as .xlsx, or give a CSV file the ending .csv");
        }
    }

    private static FileMagic magic(Path file) {
        try (InputStream in = FileMagic.prepareToCheckMagic(Files.newInputStream(file))) {
            return FileMagic.valueOf(in);
        } catch (EmptyFileException e) {
            return FileMagic.UNKNOWN;
        } catch (IOException e) {
            throw SheetFiles.refused(file, "cannot be read", "");
        }
    }

    private static Refused oldOrLocked(Path file) {
        try (POIFSFileSystem ole = new POIFSFileSystem(file.toFile(), true)) {
            if (ole.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
                return SheetFiles.refused(
                        file, "is locked by a password", "save it without a password");
            }
        } catch (IOException | RuntimeException e) {
            return old(file);
        }
        return old(file);
    }

    private static Refused old(Path file) {
        return SheetFiles.refused(
                file, "is a workbook of an old format", "open it and save it as .xlsx");
    }
}
