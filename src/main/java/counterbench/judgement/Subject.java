package counterbench.judgement;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a finding is about, exactly.
 *
 * @param kind what sort of thing
 * @param name its name: a job, a core tag, a kit serial, a claim, {@code remittance/line}, an
 *     account
 * @param part the part concerned, if the rule judges by part
 * @param step the step concerned, if the rule judges by step
 */
public record Subject(SubjectKind kind, String name, @Nullable String part, @Nullable String step) {
    public Subject {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
    }

    /** A thing as a whole. */
    public static Subject of(SubjectKind kind, String name) {
        return new Subject(kind, name, null, null);
    }

    /** One part of or on a thing. */
    public static Subject ofPart(SubjectKind kind, String name, @Nullable String part) {
        return new Subject(kind, name, part, null);
    }

    /** One step of a job. */
    public static Subject ofStep(String job, String step) {
        return new Subject(SubjectKind.JOB, job, null, step);
    }
}
