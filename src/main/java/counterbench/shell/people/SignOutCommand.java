package counterbench.shell.people;

import counterbench.people.Person;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Status;

/** Signs out whoever is signed in. */
public final class SignOutCommand extends BaseCommand {
    public SignOutCommand() {
        super(Manual.of("sign-out", Group.EVERYBODY, "Sign out of this shell"));
    }

    @Override
    protected Status run(Invocation in) {
        String who = in.session().person().map(Person::name).orElse("nobody");
        in.session().signOut();
        in.print(who.equals("nobody") ? "nobody was signed in" : who + " is signed out");
        return Status.DONE;
    }
}
