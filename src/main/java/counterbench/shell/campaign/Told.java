package counterbench.shell.campaign;

import counterbench.campaign.Pack;
import counterbench.campaign.yaml.PackReading;
import counterbench.shell.Invocation;

/** How packs are told of. */
final class Told {
    private Told() {}

    static String name(Pack pack) {
        return "campaign "
                + pack.campaign()
                + " revision "
                + pack.revision()
                + ", in force from "
                + pack.inForceFrom();
    }

    static void warnings(Invocation in, PackReading reading) {
        reading.warnings().forEach(warning -> in.tell("warning: " + warning.message()));
    }
}
