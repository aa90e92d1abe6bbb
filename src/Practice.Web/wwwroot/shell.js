// What the screens need from the browser and a circuit can not give in time: the theme, shortcut keys, reconnecting.
(() => {
  const systemDark = matchMedia("(prefers-color-scheme: dark)");
  const year = 60 * 60 * 24 * 365;

  window.practice = {
    open: (dialog) => dialog.showModal(),
    systemIsDark: () => systemDark.matches,
    chooseTheme(theme) {
      document.documentElement.dataset.theme = theme;
      document.cookie = `theme=${theme}; path=/; max-age=${year}; samesite=lax`;
    },
  };

  // In a field that finds, Enter takes what is chosen and arrows choose: neither sends the form around it nor moves the
  // caret. The circuit answers too late to prevent that.
  document.addEventListener("keydown", (event) => {
    if (event.target.matches("[role=combobox]") && ["Enter", "ArrowUp", "ArrowDown"].includes(event.key))
      event.preventDefault();
  });

  // A control says its own key in aria-keyshortcuts, so a screen reader knows it too. None fires
  // while somebody types.
  document.addEventListener("keydown", (event) => {
    if (event.target.closest("input, textarea, select, [contenteditable]")) return;
    const control = [...document.querySelectorAll("[aria-keyshortcuts]:not([disabled])")].find((c) =>
      c.getAttribute("aria-keyshortcuts").split(" ").some((keys) => matches(event, keys)),
    );
    if (!control) return;
    event.preventDefault();
    if (control.matches("input, textarea, select")) control.focus();
    else control.click();
  });

  function matches(event, keys) {
    const parts = keys.split("+");
    const key = parts.pop();
    return (
      event.key.toLowerCase() === key.toLowerCase() &&
      (event.ctrlKey || event.metaKey) === parts.includes("Control") &&
      event.altKey === parts.includes("Alt") &&
      (key.length > 1 || event.shiftKey === parts.includes("Shift") || parts.length === 0)
    );
  }

  const notice = document.getElementById("components-reconnect-modal");
  notice?.addEventListener("components-reconnect-state-changed", ({ detail }) => {
    if (detail.state === "show") notice.showModal();
    else if (detail.state === "hide") notice.close();
    else if (detail.state === "rejected") notice.open || notice.showModal();
  });
  notice?.addEventListener("click", async ({ target }) => {
    const what = target.dataset.reconnect;
    if (what === "load") location.reload();
    if (what === "try" && !(await Blazor.reconnect()) && !(await Blazor.resumeCircuit?.())) location.reload();
  });
})();
