package counterbench.labels;

import counterbench.labels.gs1.Sscc;

/** The application identifiers that our labels bear and that scans are asked for. */
final class Identifiers {
    static final String SSCC = Sscc.AI;
    static final String GTIN = "01";
    static final String LOT = "10";
    static final String EXPIRY = "17";
    static final String SERIAL = "21";
    static final String PART = "240";
    static final String CUSTOMER_PART = "241";

    /** Internal, as 92 and 93. */
    static final String JOB = "91";

    static final String CORE = "92";
    static final String SHIPMENT = "93";

    private Identifiers() {}
}
