/**
 * What a machine is asked and what was read of it: case files and duty files.
 *
 * <p>Idea: a case names a drive, the complaint, usual conditions and readings; each reading states its kind, its value and whatever differs
 * from the usual. Imports findings.reading, drive.steady, files.document, files.drive, files.demo. Begin with {@code CaseFiles}.
 */
package swashlight.files.machine;
