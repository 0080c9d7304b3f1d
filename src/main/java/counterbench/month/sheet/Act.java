package counterbench.month.sheet;

import counterbench.stock.Account;
import counterbench.stock.Move;

/** Says in a word what an act did that moved goods, by where they came from and went. */
final class Act {
    private Act() {}

    static String of(Move move) {
        return of(move.from().kind(), move.to().kind());
    }

    private static String of(Account.Kind from, Account.Kind to) {
        return switch (to) {
            case KIT, STORE -> onto(from);
            case BENCH -> issued(from);
            case VEHICLE -> "fitted new";
            case CORE -> "plug fitted";
            case SCRAP -> scrapped(from);
            case SUPPLIER -> "found missing";
            case RETURNED -> "returned";
            case TRANSIT -> "sent";
            case COUNT -> "counted, less";
        };
    }

    private static String onto(Account.Kind from) {
        return switch (from) {
            case SUPPLIER -> "received";
            case TRANSIT -> "arrived";
            case COUNT -> "counted, more";
            case RETURNED, SCRAP -> "taken back";
            default -> "put back";
        };
    }

    private static String issued(Account.Kind from) {
        return switch (from) {
            case KIT, STORE -> "issued";
            case BENCH -> "taken over";
            default -> "taken back";
        };
    }

    private static String scrapped(Account.Kind from) {
        return switch (from) {
            case BENCH -> "scrapped on the job";
            case VEHICLE -> "taken off";
            default -> "scrapped on the shelf";
        };
    }
}
