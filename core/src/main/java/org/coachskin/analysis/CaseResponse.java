package org.coachskin.analysis;

/**
 * What a panel does under a load case, counted from where it is without it.
 *
 * @param standing what stands all the time: heat, the push of a rubber seal; not multiplied by a
 *     reserve
 * @param loaded what the loads add
 * @param reversed what the same loads add the other way round
 * @param atRest what fittings do before the loads come
 * @param held what fittings do under the loads
 * @param heldReversed what they do under the loads the other way round; as at rest where a load has
 *     no other way
 */
public record CaseResponse(
        Response standing,
        Response loaded,
        Response reversed,
        Held atRest,
        Held held,
        Held heldReversed) {}
