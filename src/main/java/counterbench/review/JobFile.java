package counterbench.review;

import counterbench.campaign.Vehicle;
import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreEvent;
import counterbench.job.Job;
import counterbench.procedure.Mark;
import counterbench.stock.Issue;
import counterbench.stock.Use;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything that concerns one job, cut at the moment of the review: facts that happened later are
 * not in it.
 *
 * @param no the job's number in keys
 * @param name the job's name
 * @param job the job; null where paper names one that does not count, or not yet
 * @param vehicle the vehicle's line on the campaign's list, if it is listed
 * @param sameVehicle completed jobs on the same vehicle, this one included, where there are several
 * @param acknowledgements the return centre's rows that may concern its cores
 * @param credits credits that name one of its claims
 */
public record JobFile(
        int no,
        String name,
        @Nullable Job job,
        List<Issue> issues,
        List<Use> uses,
        List<Mark> marks,
        List<CoreEvent> cores,
        List<Acknowledgement> acknowledgements,
        List<Claim> claims,
        List<Credit> credits,
        @Nullable Vehicle vehicle,
        List<SameVehicle> sameVehicle) {
    public JobFile {
        Objects.requireNonNull(name, "name");
        issues = List.copyOf(issues);
        uses = List.copyOf(uses);
        marks = List.copyOf(marks);
        cores = List.copyOf(cores);
        acknowledgements = List.copyOf(acknowledgements);
        claims = List.copyOf(claims);
        credits = List.copyOf(credits);
        sameVehicle = List.copyOf(sameVehicle);
    }

    /** The same with more facts of its cores. */
    public JobFile with(Collection<CoreEvent> more) {
        return new JobFile(
                no,
                name,
                job,
                issues,
                uses,
                marks,
                Stream.concat(cores.stream(), more.stream()).toList(),
                acknowledgements,
                claims,
                credits,
                vehicle,
                sameVehicle);
    }

    /** The same of a job that stands otherwise. */
    public JobFile with(Job other) {
        return new JobFile(
                no,
                name,
                other,
                issues,
                uses,
                marks,
                cores,
                acknowledgements,
                claims,
                credits,
                vehicle,
                sameVehicle);
    }
}
