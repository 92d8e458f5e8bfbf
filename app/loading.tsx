import styles from "./ui/state-page.module.css";

export default function Loading() {
  return (
    <div className={styles.state} role="status">
      <p className="soft">One moment.</p>
    </div>
  );
}
