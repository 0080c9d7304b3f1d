package counterbench.shell.people;

import counterbench.people.Pin;
import counterbench.people.PinRule;
import counterbench.people.store.PinHash;
import counterbench.shared.Refused;
import counterbench.shell.Invocation;

/** Asks for a PIN that is going to be somebody's. */
final class NewPin {
    private NewPin() {}

    /** From the environment where scripts put the own PIN, or else as {@link #typed}. */
    static PinHash fromEnvironmentOrTyped(Invocation in, String name) {
        return in.surroundings().variable(Invocation.PIN_VARIABLE).isEmpty()
                ? asked(in, name, "type it, or set " + Invocation.PIN_VARIABLE)
                : PinHash.of(in.pin("PIN for " + name + ": "));
    }

    /** Typed unseen, by a person twice; from a script once. */
    static PinHash typed(Invocation in, String name) {
        return asked(in, name, "type it; a script hands it in as the next line of its input");
    }

    private static PinHash asked(Invocation in, String name, String todo) {
        Pin pin = in.typedPin("new PIN for " + name + ", 4 to 12 digits: ", todo);
        PinRule.check(pin);
        if (in.isScreen()) {
            Pin again = in.typedPin("the same again: ", todo);
            if (!again.typed().toString().contentEquals(pin.typed())) {
                throw new Refused("new PIN", "the two are not the same", "type the command again");
            }
        }
        return PinHash.of(pin);
    }
}
