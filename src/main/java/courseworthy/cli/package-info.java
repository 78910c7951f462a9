/** Commands, exit codes and streams. Each command is one class; {@link courseworthy.cli.Commands} lists them all. */
package courseworthy.cli;
