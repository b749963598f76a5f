package org.keelweigh.appraisal;

import java.util.Optional;
import org.keelweigh.boat.Figure;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;

/**
 * Somebody who paddles, carries or decides, with every figure known, if only by assumption.
 *
 * @param id which person; empty for the one who is assumed when nobody was named
 * @param data what was typed
 * @param massKg kilograms
 * @param heightM metres
 * @param use how they use the boat
 */
public record Participant(Optional<PersonId> id, PersonData data, Figure massKg, Figure heightM, PaddlingUse use) {

    /** Tells what people call them. */
    public String name() {
        return data.name();
    }

    /** Tells the same person with other weights. */
    Participant weighing(PersonData other) {
        return new Participant(id, other, massKg, heightM, use);
    }
}
