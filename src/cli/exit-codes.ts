/** 0 done; 1 done, and there are findings; 2 could not be done; 70 a defect (EX_SOFTWARE of sysexits.h). */
export const EXIT = { done: 0, findings: 1, couldNot: 2, defect: 70 } as const;
