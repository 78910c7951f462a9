/** One class a command: reads what is asked for, calls the steps and returns a result. Shows nothing. */
package courseworthy.task;
