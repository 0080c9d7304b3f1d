package counterbench.structure.bad.month;

import org.apache.poi.ss.usermodel.Cell;

/** Bad on purpose: a computation that knows workbooks. */
public final class WritesWorkbook {
    public void write(Cell cell) {
        cell.setBlank();
    }
}
