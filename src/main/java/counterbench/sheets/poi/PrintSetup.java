package counterbench.sheets.poi;

import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** How sheets are printed: across the page's width, with headings and page numbers on each page. */
final class PrintSetup {
    private PrintSetup() {}

    static void apply(SXSSFSheet sheet, Report report, boolean landscape) {
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.getPrintSetup().setLandscape(landscape);
        sheet.getPrintSetup().setPaperSize(paper(report.layout().paper()));
        sheet.setMargin(PageMargin.LEFT, PrintedPage.SIDE);
        sheet.setMargin(PageMargin.RIGHT, PrintedPage.SIDE);
        sheet.setMargin(PageMargin.TOP, PrintedPage.TOP);
        sheet.setMargin(PageMargin.BOTTOM, PrintedPage.BOTTOM);
        sheet.getHeader().setLeft("&B" + plain(report.layout().title()));
        sheet.getHeader().setCenter(plain(sheet.getSheetName()));
        sheet.getHeader().setRight(plain(report.subject()));
        sheet.getFooter().setRight("Page &P of &N");
    }

    static void repeatHeadings(SXSSFSheet sheet) {
        sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
    }

    /**
     * Spreads a sheet over pages side by side; its first column stands on each, and stays in sight
     * on the screen.
     */
    static void spread(SXSSFSheet sheet, PrintedPage page) {
        if (page.across() > 1) {
            sheet.getPrintSetup().setFitWidth((short) page.across());
            sheet.getPrintSetup().setLeftToRight(true);
            sheet.setRepeatingColumns(CellRangeAddress.valueOf("A:A"));
            sheet.createFreezePane(1, 1);
        }
    }

    private static short paper(ReportLayout.Paper paper) {
        return switch (paper) {
            case LETTER -> org.apache.poi.ss.usermodel.PrintSetup.LETTER_PAPERSIZE;
            case A4 -> org.apache.poi.ss.usermodel.PrintSetup.A4_PAPERSIZE;
            case TABLOID -> org.apache.poi.ss.usermodel.PrintSetup.TABLOID_PAPERSIZE;
            case A3 -> org.apache.poi.ss.usermodel.PrintSetup.A3_PAPERSIZE;
        };
    }

    /** Text in which an ampersand is not the start of an instruction. */
    private static String plain(String text) {
        return text.replace("&", "&&");
    }
}
