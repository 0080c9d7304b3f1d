package counterbench.people;

import java.util.Objects;
import java.util.Set;

/**
 * Somebody who acts.
 *
 * @param name the name under which the acts are recorded
 * @param roles what the person may do; at least one
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
}
