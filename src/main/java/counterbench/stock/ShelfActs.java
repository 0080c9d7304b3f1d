package counterbench.stock;

import counterbench.shared.Quantity;

/** What loose receipts and the rows of {@code moves} do to the book. */
final class ShelfActs {
    private final KitActs kits;

    ShelfActs(KitActs kits) {
        this.kits = kits;
    }

    void receive(Receipt receipt, Book.Pen pen) {
        pen.move(
                Account.SUPPLIER,
                Account.STORE,
                receipt.part(),
                Source.lot(receipt.lot()),
                receipt.quantity());
    }

    void event(StockEvent event, Book.Pen pen) {
        if (event.kit() == null) {
            loose(event, pen);
        } else if (event.part() == null) {
            wholeKit(event, event.kit(), pen);
        } else {
            partOfKit(event, event.kit(), event.part(), pen);
        }
    }

    private static Account away(StockEvent event) {
        return switch (event.kind()) {
            case RETURNED -> Account.RETURNED;
            case SCRAPPED -> Account.SCRAP;
            case SHORT -> Account.SUPPLIER;
            case SENT, ARRIVED -> Account.transit(event.otherSite());
        };
    }

    private void wholeKit(StockEvent event, String kit, Book.Pen pen) {
        switch (event.kind()) {
            case RETURNED, SCRAPPED, SENT -> kits.leave(kit, away(event), pen);
            case SHORT -> kits.missing(kit, pen);
            case ARRIVED -> kits.arrive(kit, away(event), pen);
        }
    }

    private void partOfKit(StockEvent event, String kit, String part, Book.Pen pen) {
        Quantity quantity = event.quantity();
        switch (event.kind()) {
            case RETURNED, SCRAPPED, SENT -> kits.leave(kit, part, quantity, away(event), pen);
            case SHORT -> kits.missing(kit, part, quantity, pen);
            case ARRIVED -> kits.arrive(kit, part, quantity, away(event), pen);
        }
    }

    /**
     * A loose part without a quantity moves nothing: how much lay there is not the row's to say.
     */
    private static void loose(StockEvent event, Book.Pen pen) {
        String part = event.part();
        if (part == null || event.quantity() == null) {
            return;
        }
        Source source = Source.lot(event.lot());
        if (event.kind() == StockEvent.Kind.ARRIVED) {
            pen.move(away(event), Account.STORE, part, source, event.quantity());
        } else {
            pen.move(Account.STORE, away(event), part, source, event.quantity());
        }
    }
}
