package counterbench.shell.people;

import counterbench.people.Pin;
import counterbench.people.PinRule;
import counterbench.people.store.PinHash;
import counterbench.shared.Refused;
import counterbench.shell.Invocation;
import java.util.Optional;

/** Asks for a PIN that is going to be somebody's. */
final class NewPin {
    private static final int MOST_TRIES = 3;

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

    /** A person who slipped is asked again; a script is refused, since nothing else would come. */
    private static PinHash asked(Invocation in, String name, String todo) {
        for (int tries = 1; ; tries++) {
            Pin pin = in.typedPin("new PIN for " + name + ", 4 to 12 digits: ", todo);
            Optional<Refused> wrong = wrong(in, pin, todo);
            if (wrong.isEmpty()) {
                return PinHash.of(pin);
            }
            if (!in.isScreen() || tries == MOST_TRIES) {
                throw wrong.get();
            }
            wrong.get().problems().forEach(problem -> in.tell(problem.message()));
        }
    }

    private static Optional<Refused> wrong(Invocation in, Pin pin, String todo) {
        try {
            PinRule.check(pin);
        } catch (Refused e) {
            return Optional.of(e);
        }
        return !in.isScreen() || isRepeated(in, pin, todo)
                ? Optional.empty()
                : Optional.of(
                        new Refused("new PIN", "the two are not the same", "type it twice alike"));
    }

    private static boolean isRepeated(Invocation in, Pin pin, String todo) {
        Pin again = in.typedPin("the same again: ", todo);
        return again.typed().toString().contentEquals(pin.typed());
    }
}
