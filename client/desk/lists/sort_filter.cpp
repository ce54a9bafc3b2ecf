// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/sort_filter.h"

#include <algorithm>
#include <iterator>
#include <string_view>
#include <utility>

#include <QElapsedTimer>

#include "desk/lists/table_model.h"

namespace hangbook::desk {
namespace {

constexpr qint64 pieceMs = 6;
constexpr std::size_t rowsAtOnce = 64;

/// Whether whatever fits `now` also fitted `before`, as when a letter was added.
bool narrows(const std::vector<std::string>& before, const std::vector<std::string>& now) {
  return std::all_of(before.begin(), before.end(), [&](const std::string& old) {
    return std::any_of(now.begin(), now.end(),
                       [&](const std::string& word) { return word.find(old) != std::string::npos; });
  });
}

} // namespace

SortFilter::SortFilter(QObject* parent) : QAbstractProxyModel(parent) {
  pieces_.setInterval(0);
  connect(&pieces_, &QTimer::timeout, this, &SortFilter::work);
}

void SortFilter::setModel(TableModel& model) {
  const QAbstractItemModel* const source = &model;
  beginResetModel();
  setSourceModel(&model);
  const auto willChange = [this] { beginResetModel(); };
  connect(source, &QAbstractItemModel::modelAboutToBeReset, this, willChange);
  connect(source, &QAbstractItemModel::modelReset, this, &SortFilter::sourceReset);
  // No list of ours changes row by row or sorts itself; one that does is read anew.
  connect(source, &QAbstractItemModel::rowsAboutToBeInserted, this, willChange);
  connect(source, &QAbstractItemModel::rowsInserted, this, &SortFilter::sourceReset);
  connect(source, &QAbstractItemModel::rowsAboutToBeRemoved, this, willChange);
  connect(source, &QAbstractItemModel::rowsRemoved, this, &SortFilter::sourceReset);
  connect(source, &QAbstractItemModel::layoutAboutToBeChanged, this, willChange);
  connect(source, &QAbstractItemModel::layoutChanged, this, &SortFilter::sourceReset);
  connect(source, &QAbstractItemModel::dataChanged, this, &SortFilter::sourceChanged);
  connect(source, &QAbstractItemModel::headerDataChanged, this, &QAbstractItemModel::headerDataChanged);
  connect(source, &QObject::destroyed, this, [this] {
    pieces_.stop();
    working_ = false;
    shown_.clear();
    place_.clear();
  });
  sourceReset();
}

QModelIndex SortFilter::index(int row, int column, const QModelIndex& parent) const {
  return hasIndex(row, column, parent) ? createIndex(row, column) : QModelIndex();
}

QModelIndex SortFilter::parent(const QModelIndex& /*child*/) const {
  return {};
}

int SortFilter::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int SortFilter::columnCount(const QModelIndex& parent) const {
  return parent.isValid() || sourceModel() == nullptr ? 0 : sourceModel()->columnCount();
}

bool SortFilter::hasChildren(const QModelIndex& parent) const {
  return rowCount(parent) > 0;
}

QModelIndex SortFilter::mapToSource(const QModelIndex& proxyIndex) const {
  if (!proxyIndex.isValid() || sourceModel() == nullptr || proxyIndex.row() >= rowCount()) {
    return {};
  }
  return sourceModel()->index(shown_[static_cast<std::size_t>(proxyIndex.row())], proxyIndex.column());
}

QModelIndex SortFilter::mapFromSource(const QModelIndex& sourceIndex) const {
  return sourceIndex.isValid() && shows(sourceIndex.row())
             ? index(place_[static_cast<std::size_t>(sourceIndex.row())], sourceIndex.column())
             : QModelIndex();
}

QVariant SortFilter::headerData(int section, Qt::Orientation orientation, int role) const {
  return sourceModel() == nullptr ? QVariant() : sourceModel()->headerData(section, orientation, role);
}

bool SortFilter::shows(int sourceRow) const {
  const auto row = static_cast<std::size_t>(sourceRow);
  return sourceRow >= 0 && row < place_.size() && place_[row] >= 0;
}

int SortFilter::nearestShown(int sourceRow) const {
  const std::vector<int>& rows = order_.rows();
  const auto shown = [this](int row) { return shows(row); };
  const auto here = std::find(rows.begin(), rows.end(), sourceRow);
  if (const auto behind = std::find_if(here, rows.end(), shown); behind != rows.end()) {
    return *behind;
  }
  const auto before = std::find_if(std::make_reverse_iterator(here), rows.rend(), shown);
  return before == rows.rend() ? -1 : *before;
}

void SortFilter::sort(int column, Qt::SortOrder order) {
  if (column == sortColumn_ && order == sortOrder_) {
    return;
  }
  sortColumn_ = column;
  sortOrder_ = order;
  if (sourceModel() != nullptr) {
    order_.begin(*sourceModel(), sortColumn_, sortOrder_);
    begin();
  }
}

void SortFilter::setWords(const QString& typed) {
  std::vector<std::string> words;
  for (const QString& word : typed.simplified().toCaseFolded().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    words.push_back(word.toStdString());
  }
  const bool fewer = !working_ && narrows(words_, words);
  words_ = std::move(words);
  filterAgain(fewer);
}

void SortFilter::setKeeps(std::function<bool(int)> keeps) {
  keeps_ = std::move(keeps);
  filterAgain(false);
}

void SortFilter::setVerdict(std::optional<options::Verdict> verdict, int column) {
  verdict_ = verdict;
  verdictColumn_ = column;
  filterAgain(false);
}

void SortFilter::filterAgain(bool amongShown) {
  filterChanged_ = true;
  if (sourceModel() != nullptr) {
    begin(amongShown);
  }
}

void SortFilter::sourceReset() {
  lines_.clear();
  prepared_ = 0;
  order_.begin(*sourceModel(), sortColumn_, sortOrder_);
  filterChanged_ = !acceptsAll();
  startPass(false);
  if (order_.rows().size() <= atOnce) {
    while (!step()) {
    }
    working_ = false;
    setShown(std::move(next_));
  } else {
    setShown(acceptsAll() ? order_.rows() : std::vector<int>());
  }
  filterChanged_ = filterChanged_ && working_;
  endResetModel();
  pieces_.start();
}

void SortFilter::sourceChanged() {
  lines_.clear();
  prepared_ = 0;
  if (!shown_.empty()) {
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  }
  order_.begin(*sourceModel(), sortColumn_, sortOrder_);
  filterChanged_ = filterChanged_ || !acceptsAll();
  begin();
}

void SortFilter::startPass(bool amongShown) {
  working_ = true;
  amongShown_ = amongShown;
  next_.clear();
  looked_ = 0;
}

void SortFilter::begin(bool amongShown) {
  startPass(amongShown);
  if (order_.rows().size() <= atOnce) {
    while (!step()) {
    }
    publish();
  } else {
    pieces_.start();
  }
}

void SortFilter::work() {
  QElapsedTimer time;
  time.start();
  while (working_ && !time.hasExpired(pieceMs)) {
    if (step()) {
      publish();
      return;
    }
  }
  while (!working_ && !time.hasExpired(pieceMs)) {
    if (prepared_ >= static_cast<int>(order_.rows().size())) {
      pieces_.stop();
      return;
    }
    lineOf(prepared_++);
  }
}

bool SortFilter::step() {
  if (!order_.done()) {
    order_.step();
    return false;
  }
  if (acceptsAll()) {
    next_ = order_.rows();
    return true;
  }
  const std::vector<int>& rows = amongShown_ ? shown_ : order_.rows();
  for (const std::size_t end = std::min(rows.size(), looked_ + rowsAtOnce); looked_ < end; ++looked_) {
    if (accepts(rows[looked_])) {
      next_.push_back(rows[looked_]);
    }
  }
  return looked_ == rows.size();
}

void SortFilter::publish() {
  working_ = false;
  const bool filtered = std::exchange(filterChanged_, false);
  if (next_ == shown_) {
    next_.clear();
  } else if (filtered || next_.size() != shown_.size()) {
    Q_EMIT aboutToFilter();
    beginResetModel();
    setShown(std::move(next_));
    endResetModel();
  } else {
    arrange();
  }
  if (filtered) {
    Q_EMIT shownChanged();
  }
}

/// The same rows in another order.
void SortFilter::arrange() {
  Q_EMIT layoutAboutToBeChanged({}, VerticalSortHint);
  const QModelIndexList before = persistentIndexList();
  std::vector<int> sources;
  for (const QModelIndex& each : before) {
    sources.push_back(shown_[static_cast<std::size_t>(each.row())]);
  }
  setShown(std::move(next_));
  QModelIndexList after;
  for (qsizetype i = 0; i < before.size(); ++i) {
    const auto source = static_cast<std::size_t>(sources[static_cast<std::size_t>(i)]);
    after.append(createIndex(place_[source], before[i].column()));
  }
  changePersistentIndexList(before, after);
  Q_EMIT layoutChanged({}, VerticalSortHint);
}

void SortFilter::setShown(std::vector<int> rows) {
  shown_ = std::move(rows);
  next_.clear();
  place_.assign(order_.rows().size(), -1);
  int place = 0;
  for (const int row : shown_) {
    place_[static_cast<std::size_t>(row)] = place++;
  }
}

bool SortFilter::acceptsAll() const {
  return words_.empty() && !keeps_ && !verdict_;
}

const std::string& SortFilter::lineOf(int row) const {
  const auto& source = static_cast<const TableModel&>(*sourceModel());
  lines_.resize(order_.rows().size());
  std::string& line = lines_[static_cast<std::size_t>(row)];
  if (line.empty()) {
    line = source.searched(row).toStdString();
  }
  return line;
}

bool SortFilter::accepts(int row) const {
  if (keeps_ && !keeps_(row)) {
    return false;
  }
  if (verdict_) {
    const QVariant verdict = sourceModel()->index(row, verdictColumn_).data(verdictRole);
    if (!verdict.isValid() || verdict.toInt() != static_cast<int>(*verdict_)) {
      return false;
    }
  }
  if (words_.empty()) {
    return true;
  }
  const std::string_view line = lineOf(row);
  return std::all_of(words_.begin(), words_.end(),
                     [&](const std::string& word) { return line.find(word) != std::string_view::npos; });
}

} // namespace hangbook::desk
