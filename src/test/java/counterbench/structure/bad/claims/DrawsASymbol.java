package counterbench.structure.bad.claims;

import uk.org.okapibarcode.backend.Symbol;

/** Bad on purpose: a computation that knows how symbols are drawn. */
public final class DrawsASymbol {
    public String drawn(Symbol symbol) {
        return symbol.getContent();
    }
}
