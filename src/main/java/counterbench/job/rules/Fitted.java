package counterbench.job.rules;

import counterbench.shared.Quantity;

/**
 * What one use fitted new and is still on the vehicle.
 *
 * @param kit the serial of the kit that gave it, empty if none did
 */
record Fitted(String kit, Quantity left) {
    Fitted without(Quantity off) {
        return new Fitted(kit, left.minus(off));
    }
}
