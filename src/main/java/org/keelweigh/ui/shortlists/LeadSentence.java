package org.keelweigh.ui.shortlists;

import org.keelweigh.appraisal.Answer;
import org.keelweigh.appraisal.Answers;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.shortlist.Facts;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Says in one sentence who leads a shortlist. */
final class LeadSentence {

    private static final Logger LOG = LoggerFactory.getLogger(LeadSentence.class);

    private LeadSentence() {}

    static String of(AppraisalService appraisal, Facts facts) {
        if (facts.candidates().isEmpty()) {
            return "No boats yet: open it to add the first.";
        }
        try {
            Measured measured = appraisal.measure(facts);
            Answer answer = Answers.of(measured, measured.perspectives().getFirst());
            return answer.headline() + ". " + answer.sentences().getFirst();
        } catch (RuntimeException e) {
            LOG.error("Shortlist {} could not be measured", facts.shortlist().id(), e);
            return "Who leads could not be measured; the reason is in the log.";
        }
    }
}
