"use client";
import { useEffect, useState } from "react";
import { dateOfDay, dayOf } from "@/lib/memory/day";
import { stampNow } from "@/lib/store/clock";

/** The student's own day as YYYY-MM-DD; null on the server, which does not know it. */
export function useToday(): string | null {
  const [today, setToday] = useState<string | null>(null);
  useEffect(() => setToday(dateOfDay(dayOf(stampNow()))), []);
  return today;
}
