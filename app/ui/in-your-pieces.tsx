"use client";
export function InYourPieces({ slug }: { slug: string }) { return slug === "" ? null : null; }
