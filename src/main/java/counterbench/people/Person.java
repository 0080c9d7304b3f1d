package counterbench.people;

import counterbench.shared.Refused;
import java.util.Objects;
import java.util.Set;

/**
 * Somebody who acts.
 *
 * @param name the name under which the acts are recorded
 * @param roles what the person may do; none where the person acts no more
 */
public record Person(String name, Set<Role> roles) {
    public Person {
        Objects.requireNonNull(name, "name");
        roles = Set.copyOf(roles);
    }

    /** Whether the person may act in a role, which the lead always may. */
    public boolean mayActAs(Role role) {
        return roles.contains(role) || roles.contains(Role.LEAD);
    }

    /** Whether the person still acts. */
    public boolean isActive() {
        return !roles.isEmpty();
    }

    /**
     * Refuses an act that belongs to a role which the person does not have.
     *
     * @param act what was asked, as messages begin with it
     */
    public void mustActAs(Role role, String act) {
        mustActAsOneOf(Set.of(role), act);
    }

    /**
     * Refuses an act that belongs to some roles of which the person has none.
     *
     * @param act what was asked, as messages begin with it
     */
    public void mustActAsOneOf(Set<Role> wanted, String act) {
        if (wanted.stream().noneMatch(this::mayActAs)) {
            throw new Refused(
                    act,
                    "this is for the role "
                            + Role.listed(wanted).replace(",", " or")
                            + ", and "
                            + name
                            + (isActive() ? " has " + Role.listed(roles) : " acts no more"),
                    "sign in as somebody with that role");
        }
    }
}
