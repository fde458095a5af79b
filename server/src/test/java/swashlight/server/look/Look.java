package swashlight.server.look;

/**
 * What somebody looks at the page with.
 *
 * @param width of the window, CSS pixels
 * @param height of the window, CSS pixels
 * @param theme the page's theme
 * @param language the page's language
 */
record Look(String name, int width, int height, String theme, String language) {
    static final Look PHONE = new Look("phone", 390, 844, "light", "en");
    static final Look PHONE_DARK = new Look("phone-dark", 390, 844, "dark", "en");
    static final Look SMALL_PHONE = new Look("small-phone", 360, 740, "light", "de");
    static final Look DESK = new Look("desk", 1440, 900, "light", "en");
    static final Look DESK_DARK = new Look("desk-dark", 1440, 900, "dark", "de");
    static final Look PROJECTOR = new Look("projector", 1920, 1080, "projector", "en");

    boolean phone() {
        return width < 600;
    }

    @Override
    public String toString() {
        return name;
    }
}
