package counterbench.people;

/** Checks who somebody is. */
public interface SignIn {
    /**
     * The person of that name, if the PIN is theirs.
     *
     * @throws counterbench.shared.Refused if there is no such person or the PIN is another one
     */
    Person signIn(String name, Pin pin);

    /**
     * Somebody who signed in earlier, with the roles that the person has by now.
     *
     * @throws counterbench.shared.Refused if the person acts no more
     */
    Person stillThere(Person person);
}
