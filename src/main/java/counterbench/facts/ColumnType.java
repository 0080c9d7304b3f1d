package counterbench.facts;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;

/** What a cell of a column holds, and as which Java type it travels. */
public enum ColumnType {
    /** A name or short text, up to 200 characters. */
    TEXT(String.class),
    /** A longer text, up to 1,000 characters. */
    NOTE(String.class),
    /** A whole document, up to 1,000,000 characters; never in a sheet. */
    DOCUMENT(String.class),
    /** An instant, cut to microseconds. */
    TIME(Instant.class),
    /** A calendar day. */
    DATE(LocalDate.class),
    /** An exact decimal, to three places. */
    QUANTITY(BigDecimal.class),
    /** An exact decimal, to six places: readings, minutes, percentages, unit costs. */
    DECIMAL(BigDecimal.class),
    /** An amount of money, to three places (no currency has more). */
    AMOUNT(BigDecimal.class),
    /** A whole number. */
    WHOLE(Long.class),
    /** A VIN as written; compared in upper case without spaces. */
    VIN(String.class),
    /** Parts and quantities: {@code QM-4473:1; QM-4476:2}; travels normalised. */
    PARTS(String.class),
    /** Roles: {@code parts, lead}; travels normalised. */
    ROLES(String.class),
    /** Attributes and answers of a vehicle: {@code engine=big; transmission=manual}; normalised. */
    ATTRIBUTES(String.class);

    private final Class<?> javaType;

    ColumnType(Class<?> javaType) {
        this.javaType = javaType;
    }

    /** The class of values of this type. */
    public Class<?> javaType() {
        return javaType;
    }

    /** The most characters that a text of this type may have. */
    public int maxLength() {
        return switch (this) {
            case DOCUMENT -> 1_000_000;
            case NOTE, PARTS, ATTRIBUTES -> 1_000;
            default -> 200;
        };
    }

    /** Decimal places that a number of this type may have. */
    public int maxScale() {
        return switch (this) {
            case QUANTITY, AMOUNT -> 3;
            case DECIMAL -> 6;
            default -> 0;
        };
    }
}
