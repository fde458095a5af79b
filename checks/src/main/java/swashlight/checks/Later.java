package swashlight.checks;

/**
 * A row that no law answers yet.
 *
 * @param id   the row, or {@code family/*} for all rows of a family
 * @param room the room that will answer it
 * @param why  why not today
 */
public record Later(String id, String room, String why) {

    public Later {
        if (id.isBlank() || room.isBlank() || why.isBlank()) {
            throw new IllegalArgumentException("later '" + id + "': id, room and why must be filled in");
        }
    }

    /** Whether this entry speaks of that row. */
    public boolean covers(CheckRow row) {
        return id.equals(row.id()) || id.equals(row.family() + "/*");
    }
}
