package org.keelweigh.shortlist.store;

import java.util.Optional;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.VisitNotesStore;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps the notes of visits in a relational database. */
@Repository
class JdbcVisitNotesStore implements VisitNotesStore {

    private final JdbcClient database;

    JdbcVisitNotesStore(JdbcClient database) {
        this.database = database;
    }

    @Override
    public Optional<Kept> find(CandidateId boat) {
        return database.sql("select document, changed_by from visit where candidate_id = ?")
                .param(boat.value())
                .query((row, number) -> new Kept(row.getString(1), row.getString(2)))
                .optional();
    }

    /** The boat's row is there from the start, so that even the first notes of two people come one after the other. */
    @Override
    public Optional<Kept> findToChange(CandidateId boat) {
        database.sql("select id from shortlist_entry where id = ? for update")
                .param(boat.value())
                .query((row, number) -> row.getString(1))
                .optional();
        return find(boat);
    }

    @Override
    public void put(CandidateId boat, Kept kept) {
        int changed = database.sql("update visit set document = ?, changed_by = ? where candidate_id = ?")
                .params(kept.document(), kept.by(), boat.value())
                .update();
        if (changed == 0) {
            database.sql("insert into visit (candidate_id, document, changed_by) values (?, ?, ?)")
                    .params(boat.value(), kept.document(), kept.by())
                    .update();
        }
    }
}
