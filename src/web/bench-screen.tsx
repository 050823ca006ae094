/** The drawing table with its four views, the head above it and the caution below. */

import type { JSX } from "preact";
import { TRAINING_CAUTION } from "../scene/index.ts";
import type { AppProps } from "./app.tsx";
import { ChartSheet } from "./chart/chart-sheet.tsx";
import { ChartTools } from "./chart/chart-tools.tsx";
import type { AskCardProps } from "./covers/ask-card.tsx";
import { askingOf } from "./covers/asking.ts";
import { CoverMenu } from "./covers/cover-menu.tsx";
import { CoverPointer } from "./covers/cover-pointer.tsx";
import { FieldKey, FieldTool } from "./field/field-on-bench.tsx";
import { Announcer } from "./frame/announcer.tsx";
import { FirstMinuteSlip } from "./frame/first-minute-slip.tsx";
import { Header } from "./frame/header.tsx";
import { later } from "./frame/later.tsx";
import { ThemeSwitch } from "./frame/theme-switch.tsx";
import { UndoButtons } from "./frame/undo-buttons.tsx";
import { useLayoutKeys } from "./layout/layout-keys.ts";
import { PhoneTabs } from "./layout/phone-tabs.tsx";
import { PresetButton } from "./layout/preset-button.tsx";
import { Table } from "./layout/table.tsx";
import { ViewTabs } from "./layout/view-tabs.tsx";
import { MotionBar } from "./motion/motion-bar.tsx";
import { useMotion } from "./motion/use-motion.ts";
import { PanelView } from "./panel/panel-view.tsx";
import { ReasonsView, ReceiverTabs } from "./reasons/reasons-view.tsx";
import { PictureTabs } from "./signal/picture-tabs.tsx";
import { SignalButton, useSignalKey } from "./signal/signal-button.tsx";
import { SignalView } from "./signal/signal-view.tsx";
import { ChartToolSheets } from "./tools/chart-tool-sheets.tsx";
import { ToolRow } from "./tools/tool-row.tsx";

/** The card that asks comes with the first cover. */
const askCard = later<AskCardProps>(async () => (await import("./covers/ask-card.tsx")).AskCard);

export interface BenchScreenProps extends AppProps {
  readonly onShare: () => void;
  readonly onHelp: () => void;
  /** What is wrong with a file; laid over the chart. */
  readonly children: JSX.Element | null;
}

export function BenchScreen(props: BenchScreenProps): JSX.Element {
  const { bench, player, hold, layout, screen, themeState, firstMinute, onShare, onHelp, children } = props;
  const { tools: chartTools, field } = props;
  const theme = themeState.theme.value;
  const phone = layout.phone.value;
  const projecting = layout.preset.value === "project";
  const typeScale = layout.typeScale.value;
  const asking = askingOf(bench);
  const asks = asking.asked.value !== null;
  useLayoutKeys(layout, screen.goPractise);
  useSignalKey(chartTools, layout);
  // The signal's sheet lies on the chart, or where there is none on its own view.
  const chartSeen = layout.isSeen("chart");
  const onSignal = !phone && !chartSeen && chartTools.open.value === "signal";
  const sheets = <ChartToolSheets {...{ bench, hold, chartSeen }} tools={chartTools} />;
  useMotion({ bench, player, sight: hold });
  const tools = (
    <div class="head-tools">
      {phone ? (
        <button type="button" class="button" onClick={screen.goHome}>
          Home
        </button>
      ) : null}
      {phone ? null : <UndoButtons bench={bench} />}
      <CoverMenu bench={bench} />
      <button type="button" class="button" aria-keyshortcuts="Q" onClick={screen.goPractise}>
        Practice
      </button>
      <button type="button" class="button" onClick={onShare}>
        Share
      </button>
      {phone ? null : <PresetButton layout={layout} />}
      <ThemeSwitch choice={themeState.choice} />
      <button type="button" class="button" aria-keyshortcuts="?" onClick={onHelp}>
        Help
      </button>
    </div>
  );
  return (
    <div
      class="bench"
      data-preset={layout.preset.value}
      data-phone={phone}
      data-pane={phone ? layout.phonePane.value : undefined}
      data-asks={asks}
      data-pointing={asking.pointing.value}
      style={{ "--type-scale": String(typeScale) }}
    >
      <Header bench={bench} onHome={projecting || phone ? null : screen.goHome} editable={!projecting}>
        {projecting ? null : phone ? <UndoButtons bench={bench} /> : tools}
      </Header>
      {asks ? (
        <askCard.Part
          bench={bench}
          theme={theme}
          foldable={phone}
          onLifted={() => {
            if (!layout.isSeen("reasons")) layout.choose("reasons");
          }}
        />
      ) : null}
      <Table
        layout={layout}
        views={{
          chart: {
            aside: (
              <>
                <ToolRow tools={chartTools} />
                <FieldTool bench={bench} state={field} />
                <ChartTools hold={hold} />
              </>
            ),
            sheet: (
              <>
                <ChartSheet
                  bench={bench}
                  hold={hold}
                  theme={theme}
                  typeScale={typeScale}
                  trail={player.trail}
                  tools={chartTools}
                  field={field}
                  onMoved={() => firstMinute.tick("drag")}
                >
                  {children}
                  {phone || projecting || onSignal ? null : sheets}
                </ChartSheet>
                <FieldKey bench={bench} state={field} theme={theme} />
                {phone ? <ChartTools hold={hold} /> : null}
                {projecting ? null : (
                  <MotionBar bench={bench} player={player} theme={theme} compact={phone} />
                )}
              </>
            ),
          },
          panel: {
            sheet: (
              <PanelView
                bench={bench}
                theme={theme}
                flight={player}
                onTurned={() => firstMinute.tick("turn")}
              />
            ),
          },
          signal: {
            aside: (
              <>
                <PictureTabs />
                <SignalButton bench={bench} tools={chartTools} layout={layout} id="tool-signal" />
              </>
            ),
            sheet: (
              <>
                <SignalView
                  bench={bench}
                  theme={theme}
                  typeScale={layout.typeScaleOf("signal")}
                  headed={projecting || phone}
                >
                  {phone ? <SignalButton bench={bench} tools={chartTools} layout={layout} /> : null}
                </SignalView>
                {projecting || !onSignal ? null : sheets}
              </>
            ),
          },
          reasons: {
            aside: <ReceiverTabs bench={bench} />,
            sheet: (
              <ReasonsView
                bench={bench}
                headed={projecting || phone}
                onPointedAt={() => firstMinute.tick("why")}
              />
            ),
          },
        }}
      />
      {phone && layout.phonePane.value === "tools" ? (
        <section class="phone-pane" aria-label="Tools">
          <ToolRow tools={chartTools} />
          <div class="phone-tools">
            <FieldTool bench={bench} state={field} />
            <SignalButton bench={bench} tools={chartTools} layout={layout} id="tool-signal" />
          </div>
          {sheets}
          {tools}
        </section>
      ) : null}
      <footer class="foot">
        {projecting ? null : <FirstMinuteSlip firstMinute={firstMinute} />}
        <p>{TRAINING_CAUTION}</p>
        {phone ? null : <ViewTabs layout={layout} />}
        {projecting ? <PresetButton layout={layout} /> : null}
      </footer>
      {phone ? <PhoneTabs layout={layout} /> : null}
      <Announcer bench={bench} />
      <CoverPointer bench={bench} />
    </div>
  );
}
