package counterbench.sheets.poi;

import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** How sheets are printed: across the page's width, with headings and page numbers on each page. */
final class PrintSetup {
    private static final double SIDE = 0.5;
    private static final double TOP = 0.8;
    private static final double BOTTOM = 0.7;

    private PrintSetup() {}

    static void apply(SXSSFSheet sheet, Report report, boolean landscape) {
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.getPrintSetup().setLandscape(landscape);
        sheet.getPrintSetup().setPaperSize(paper(report.layout().paper()));
        sheet.setMargin(PageMargin.LEFT, SIDE);
        sheet.setMargin(PageMargin.RIGHT, SIDE);
        sheet.setMargin(PageMargin.TOP, TOP);
        sheet.setMargin(PageMargin.BOTTOM, BOTTOM);
        sheet.getHeader().setLeft("&B" + plain(report.layout().title()));
        sheet.getHeader().setCenter(plain(sheet.getSheetName()));
        sheet.getHeader().setRight(plain(report.subject()));
        sheet.getFooter().setRight("Page &P of &N");
    }

    static void repeatHeadings(SXSSFSheet sheet) {
        sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
    }

    private static short paper(ReportLayout.Paper paper) {
        return paper == ReportLayout.Paper.A4
                ? org.apache.poi.ss.usermodel.PrintSetup.A4_PAPERSIZE
                : org.apache.poi.ss.usermodel.PrintSetup.LETTER_PAPERSIZE;
    }

    /** Text in which an ampersand is not the start of an instruction. */
    private static String plain(String text) {
        return text.replace("&", "&&");
    }
}
