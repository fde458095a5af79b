package swashlight.architecture;

/**
 * A number that a room hands out.
 *
 * @param where file and line
 * @param what how one would call it: "record component clearance of AnnularGap"
 * @param name its name
 * @param ownDoc its own Javadoc, empty if none
 * @param typeDoc the Javadoc of the type it stands in, empty if none
 */
record PublicDouble(String where, String what, String name, String ownDoc, String typeDoc) {

    /** Its own Javadoc has a unit, or a line or a {@code @param} of the type's Javadoc speaks of it and has one. */
    boolean saysItsUnit() {
        return Units.saidIn(ownDoc)
                || typeDoc.lines().anyMatch(line -> Units.speaksOf(line, name) && Units.saidIn(line))
                || Units.saidIn(parameterDoc());
    }

    private String parameterDoc() {
        for (String block : typeDoc.split("(?m)^\\s*(?=@)")) {
            if (block.startsWith("@param " + name + " ")) return block.substring(("@param " + name).length());
        }
        return "";
    }

    String complaint() {
        return where + ": " + what + " says no unit";
    }
}
