/**
 * Drive descriptions as YAML or JSON: from a nameplate to full geometry, and back without losing a bit.
 *
 * <p>Idea: a file states what somebody knows; {@code TypicalDrive} completes the rest with its spread; every number remembers whether
 * it is given, fitted or typical. Imports drive.description, drive.oil, files.document, files.unit, files.demo. Begin with
 * {@code DriveFiles}.
 */
package swashlight.files.drive;
